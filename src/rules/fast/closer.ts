import type { Candidate } from '../arranging/candidates.ts';
import { oriented } from '../arranging/oriented.ts';
import { BARE, groundOf, type World } from '../arranging/setting.ts';
import { mostStations } from '../arranging/vise-stations.ts';
import { CHECKS } from '../checks/index.ts';
import type { Case, ShopCase } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { freshMemo } from '../judging/memo.ts';
import { derived, type Value } from '../judging/value.ts';
import { swapHoursOf, swapsOf } from '../weighing/swaps.ts';
import { unlessBarred } from './barred.ts';
import { addTo, type FamilyBits, mayPassWithout } from './family-bits.ts';
import { FAILS, type FlatJudge, flatJudge, isFlat } from './flat-judge.ts';
import { casesFor, type Flats, flatsOf } from './flats.ts';
import type { Hopes, HopesOf, KnownOf } from './hopes.ts';
import { openGround } from './open-ground.ts';
import type { Survivor } from './survey.ts';
import { machineHalf, pairAt, type Tables } from './tables.ts';
import { threeOf } from './verdict-of.ts';

/** An arrangement with the best that it may come to. */
export interface Hopeful {
  readonly candidate: Candidate;
  /** null: a built-in table, of which the tables know nothing */
  readonly pair: Survivor | null;
  readonly hopes: Hopes;
}

/** What a closer look shows: a check that it cannot pass in any setting, or what it may come to at best. */
export type Closer = { readonly drop: Check } | { readonly hopes: Hopes };

/**
 * Looks closer at one that is not behind yet: at the checks that take both machine and stand, in all settings at once, or of a
 * built-in table at all checks; at the vises that find room at all, and at the lifts that follow from that. Takes a fraction
 * of what judging it takes.
 */
export function closerBy(tables: Tables, world: World, hopesOf: HopesOf): (of: Hopeful) => Closer {
  const { bits, shop } = tables;
  const known = new Set([
    ...[...tables.onStands, ...tables.onMachines].map(({ check }) => check),
    ...tables.pairs.flatMap(({ check, ofMachine, whole }) => (ofMachine && whole ? [check] : [])),
  ]);
  const flats = flatsOf(bits.families, shop);
  const onPair = lookAt(
    CHECKS.filter((check) => !known.has(check)),
    flats,
    bits,
    shop,
  );
  const onBuiltIn = lookAt(CHECKS, flats, bits, shop);
  return ({ candidate, pair, hopes }) => {
    const price = derived({ low: -hopes.price, high: Number.POSITIVE_INFINITY }, 'price', []);
    const fails = pair?.fails.slice() ?? new Uint32Array(bits.words);
    if (pair === null) {
      const ground = groundOf({ shop, memo: freshMemo() }, candidate, BARE, price);
      const drop = onBuiltIn(oriented(ground), fails);
      return drop === null ? { hopes: hopesOf(candidate, fails) } : { drop };
    }
    const { machine, stand } = pairAt(tables, pair);
    const vises = visesOf(world, candidate);
    const ground = openGround({ ...machineHalf(machine, stand.rotary, shop), stand });
    const drop = onPair([priced(ground, price, vises.swaps)], fails);
    return drop === null ? { hopes: hopesOf(candidate, fails, vises) } : { drop };
  };
}

/**
 * Looks at these checks on all grounds that an arrangement may be, and adds the families that fail on each of them. Gives the
 * check that it cannot pass: one of its own, or the one that costs most hours.
 */
function lookAt(
  checks: readonly Check[],
  flats: Flats,
  bits: FamilyBits,
  shop: ShopCase,
): (grounds: readonly Case[], fails: Uint32Array) => Check | null {
  const own = checks
    .filter(({ about }) => about === 'arrangement')
    .map((check) => ({ check, fails: failsOn(check, flats) }));
  const ofParts = checks
    .filter((check) => check.about === 'part' && isFlat(check))
    .map((check) => ({ check, judge: flatJudge(check, casesFor(check, flats)) }));
  return (grounds, fails) => {
    for (const each of own) if (grounds.every(each.fails)) return each.check;
    let costliest: { readonly check: Check; readonly hours: number } | null = null;
    for (const { check, judge } of ofParts) {
      const found = unlessBarred(() => onEach(grounds, judge));
      const failing = new Uint32Array(bits.words);
      flats.kindsOf.forEach((kinds, family) => {
        if (found?.every((each) => kinds.every((at) => each[at] === FAILS)) === true)
          addTo(failing, 0, family);
      });
      const hours = bits.hours(failing, 'high');
      if (costliest === null || hours > costliest.hours) costliest = { check, hours };
      for (let word = 0; word < bits.words; word += 1)
        fails[word] = (fails[word] as number) | (failing[word] as number);
    }
    const mayPass = costliest === null || mayPassWithout(bits, fails, shop.assume.leastCoverage);
    return mayPass ? null : (costliest?.check ?? null);
  };
}

/** What a judge says stays good until the next ground: of several it is copied. */
function onEach([only, ...others]: readonly Case[], judge: FlatJudge): readonly Uint8Array[] {
  if (only === undefined) return [];
  return others.length === 0 ? [judge(only)] : [only, ...others].map((ground) => judge(ground).slice());
}

/** Does a check of the arrangement fail? Not, where that hangs on what may not be read. */
function failsOn(check: Check, flats: Flats): (ground: Case) => boolean {
  const judge = isFlat(check) ? flatJudge(check, casesFor(check, flats)) : null;
  return (ground) =>
    unlessBarred(() => (judge === null ? threeOf(check, ground) === 'fails' : judge(ground)[0] === FAILS)) ===
    true;
}

const priced = (ground: Case, price: Value, swaps: Value): Case =>
  Object.create(ground, { price: { value: price }, swaps: { value: swaps } }) as Case;

function visesOf(world: World, candidate: Candidate): KnownOf & { readonly swaps: Value } {
  const most = [false, true].map((turned) =>
    mostStations(groundOf(world, candidate, { ...BARE, place: { ...BARE.place, turned } })),
  );
  // a level spindle: no vise holds work toward it
  const vises = Math.max(0, ...most.map((each) => each ?? 0));
  const swaps = swapsOf(world.shop, false, { low: 0, high: vises });
  return { vises, swaps, swapHours: swapHoursOf(world.shop, swaps).low };
}
