import type { ClearanceAddition } from '../../catalog/catalog.ts';
import type { Verdict } from '../decision.ts';
import { corners } from '../facts/corners.ts';
import type { Case, PartCase, PlaceCase, RotaryCase, ShopCase } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { idOf, type Memo } from '../judging/memo.ts';
import { derived, known, type Value } from '../judging/value.ts';
import type { Candidate } from './candidates.ts';
import type { Family } from './family.ts';

/** How a candidate is set up: what is added, what goes under the rotary, where it stands, how it is turned. */
export interface Setting {
  readonly additions: readonly ClearanceAddition[];
  /** mm, 0: none */
  readonly plates: number;
  readonly place: PlaceCase;
}

export const BARE: Setting = { additions: [], plates: 0, place: { x: 0, y: 0, turned: false } };

/** What a decision has at hand while it judges. */
export interface World {
  readonly shop: ShopCase;
  readonly memo: Memo;
  /** what judges all families of a large mix at once; without it each is judged by itself */
  readonly atOnce?: AtOnce;
}

/**
 * The worst verdict of these checks on a family, where *holds if* may be *holds*. `byItself` judges one check on it where something
 * is open. Null: it says nothing of such a ground.
 */
export type AtOnce = (
  ground: Case,
  family: Family,
  checks: readonly Check[],
  byItself: (check: Check) => Verdict,
) => Verdict | null;

export const raisedBy = ({ additions }: Setting): number =>
  additions.reduce((sum, each) => sum + each.adds, 0);

const STEEL = 7850;
const CUBIC_MM_PER_CUBIC_M = 1e9;
const NO_PRICE = known(0, 'price');
const NO_SWAPS = known(0, 'swaps');

export const heightenedBy = ({ additions }: Setting): number =>
  additions.reduce((sum, each) => sum + each.height, 0);

/** Mass of a steel plate as large as the base (on its back: as the back), kg. */
export function plateMass({ rotary }: Pick<Candidate, 'rotary'>, thickness: number): Value {
  if (thickness === 0) return known(0, 'plates.mass');
  const { axes, gravity, baseAlong, baseAcross, height } = rotary;
  const sides = axes === 1 && gravity === 'along' ? [height, baseAcross] : [baseAlong, baseAcross];
  const mass = corners(
    sides,
    ([along = 0, across = 0]) => (along * across * thickness * STEEL) / CUBIC_MM_PER_CUBIC_M,
  );
  // nothing times anything is no number: a plate weighs something
  return derived({ low: Math.max(0, mass.low), high: mass.high }, 'plates.mass', sides);
}

/** The same rotary under another gravity is another one to whatever is kept. */
export const rotaryId = (memo: Memo, { key, gravity }: RotaryCase): number =>
  idOf(memo, 'rotary', gravity === 'tool' ? key : `${key}/${gravity}`);

/** Everything that the checks read but the part, for one candidate as it is set up. */
export function groundOf(
  world: World,
  candidate: Candidate,
  setting: Setting,
  price: Value = NO_PRICE,
  swaps: Value = NO_SWAPS,
): Case {
  const { place, plates } = setting;
  const { memo } = world;
  const raised = raisedBy(setting);
  const heightened = heightenedBy(setting);
  return {
    keys: {
      part: 0,
      rotary: rotaryId(memo, candidate.rotary),
      mounting: idOf(memo, 'mounting', candidate.mounting),
      machine: idOf(memo, 'machine', candidate.machine.key),
      additions: idOf(memo, 'additions', `${raised}/${heightened}`),
      plates: idOf(memo, 'plates', String(plates)),
      turn: place.turned ? 1 : 0,
      place: Number.NaN,
      price: Number.NaN,
      swaps: Number.NaN,
    },
    memo,
    shop: world.shop,
    machine: candidate.machine,
    rotary: candidate.rotary,
    mounting: candidate.mounting,
    part: null,
    orientation: [],
    withParts: new Map(),
    raised: known(raised, 'clearance.raised'),
    heightened: known(heightened, 'clearance.height'),
    plateThickness: known(plates, 'plates.thickness'),
    plateMass: plateMass(candidate, plates),
    place,
    price,
    swaps,
  };
}

/** The same with one part on it; made once for each part. */
export function withPart(ground: Case, part: PartCase): Case {
  const known = ground.withParts.get(part);
  if (known !== undefined) return known;
  const made: Case = {
    ...ground,
    keys: { ...ground.keys, part: idOf(ground.memo, 'part', part.key) },
    part,
  };
  ground.withParts.set(part, made);
  return made;
}
