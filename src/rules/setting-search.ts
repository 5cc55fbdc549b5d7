import type { ClearanceAddition } from '../catalog/catalog.ts';
import type { Candidate } from './candidates.ts';
import type { Family } from './family.ts';
import { FIXED_CHECKS, judgeFamily, judgeOwn, OWN_CHECKS, SETTING_CHECKS, worstOf } from './judging.ts';
import { type Outcome, passes } from './outcome.ts';
import { bestRange, nearestTo, placesInReach, placesOnTable, type Range } from './place.ts';
import { risersFor } from './risers.ts';
import { BARE, caseOf, raisedBy, type Setting, type World } from './setting.ts';
import { viseStations } from './vise-stations.ts';

/** A candidate as it is set up best, with everything that was found on the way. */
export interface SetUp {
  readonly candidate: Candidate;
  readonly setting: Setting;
  readonly slack: { readonly x: number; readonly y: number };
  readonly own: readonly Outcome[];
  readonly families: readonly { readonly family: Family; readonly outcomes: readonly Outcome[] }[];
  /** every addition and plate that was tried, with the hours that surely hold */
  readonly tried: readonly Score[];
}

export interface Score {
  readonly setting: Setting;
  readonly slack: { readonly x: number; readonly y: number };
  readonly ownPasses: number;
  readonly musts: number;
  readonly sureHours: number;
  readonly openHours: number;
  readonly stations: number;
}

interface InPlay {
  readonly family: Family;
  readonly fixed: readonly Outcome[];
}

/**
 * Chooses place, additions and plates: most hours that surely hold, then fewest additions, thinnest plates,
 * most vise stations, nearest the middle of the table. Families that fail whatever is done are left out.
 */
export function setUpBest(world: World, candidate: Candidate, families: readonly Family[]): SetUp {
  const judged = families.map((family) => ({
    family,
    fixed: judgeFamily(world, candidate, BARE, family, FIXED_CHECKS),
  }));
  const inPlay = judged.filter(({ fixed }) => worstOf(fixed) !== 'fails');
  const tried = candidate.machine.builtIn
    ? [scoreOf(world, candidate, BARE, { x: 0, y: 0 }, inPlay)]
    : search(world, candidate, inPlay);
  const best = tried.reduce((a, b) => (isBetter(b, a) ? b : a));
  const { setting } = best;
  return {
    candidate,
    setting,
    slack: best.slack,
    own: judgeOwn(world, candidate, setting, OWN_CHECKS),
    families: judged.map(({ family, fixed }) => ({
      family,
      outcomes: [...fixed, ...judgeFamily(world, candidate, setting, family, SETTING_CHECKS)],
    })),
    tried,
  };
}

/** Goes through additions and plates from little to much, and stops once nothing more can be won. */
function search(world: World, candidate: Candidate, inPlay: readonly InPlay[]): readonly Score[] {
  const most = inPlay.reduce((sum, { family }) => sum + family.hours.low, 0);
  const tried: Score[] = [];
  for (const additions of additionSets(candidate)) {
    for (const plates of plateChoices(world, candidate, additions, inPlay)) {
      const scores = placed(world, candidate, { additions, plates }, inPlay);
      tried.push(scores.reduce((a, b) => (isBetter(b, a) ? b : a)));
      if (tried.some((score) => score.ownPasses === 2 && score.sureHours >= most - 1e-9)) return tried;
    }
    if (inPlay.length === 0) return tried;
  }
  return tried;
}

/** Subsets of what the machine offers, at most one of a kind, fewest and lowest first. */
function additionSets({ machine }: Candidate): readonly (readonly ClearanceAddition[])[] {
  const sets = machine.row.clearance.reduce<readonly (readonly ClearanceAddition[])[]>(
    (all, each) => [
      ...all,
      ...all.filter((set) => set.every(({ kind }) => kind !== each.kind)).map((set) => [...set, each]),
    ],
    [[]],
  );
  return [...sets].sort((a, b) => a.length - b.length || raised(a) - raised(b));
}

const raised = (additions: readonly ClearanceAddition[]): number => raisedBy({ ...BARE, additions });

/** No plate, the adapter, and each riser that a part in play needs with these additions. */
function plateChoices(
  world: World,
  candidate: Candidate,
  additions: readonly ClearanceAddition[],
  inPlay: readonly InPlay[],
): readonly number[] {
  const setting = { ...BARE, additions };
  const risers = inPlay.flatMap(({ family }) =>
    family.cases.flatMap((part) => risersFor(caseOf(world, candidate, setting, part))),
  );
  return [...new Set([0, world.shop.assume.plateThickness, ...risers])].sort((a, b) => a - b);
}

/** Both leans; centered, and as far to either end as base and travel allow. */
function placed(
  world: World,
  candidate: Candidate,
  given: Pick<Setting, 'additions' | 'plates'>,
  inPlay: readonly InPlay[],
): readonly Score[] {
  return [false, true].flatMap((turned) => {
    const setting: Setting = { ...given, place: { x: 0, y: 0, turned } };
    const x = rangeOn(world, candidate, setting, inPlay, 'x');
    const y = rangeOn(world, candidate, setting, inPlay, 'y');
    const slack = { x: widthOf(x), y: widthOf(y) };
    const places = [...new Set([nearestTo(0, x), ...[x.from, x.to].filter(Number.isFinite)])];
    return places.map((at) =>
      scoreOf(world, candidate, { ...given, place: { x: at, y: nearestTo(0, y), turned } }, slack, inPlay),
    );
  });
}

const widthOf = ({ from, to }: Range): number => Math.max(0, to - from);

function rangeOn(
  world: World,
  candidate: Candidate,
  setting: Setting,
  inPlay: readonly InPlay[],
  axis: 'x' | 'y',
): Range {
  const table = placesOnTable(caseOf(world, candidate, setting, null), axis);
  const wishes = inPlay.flatMap(({ family }) =>
    family.cases.map((part) => ({
      range: placesInReach(caseOf(world, candidate, setting, part), axis),
      weight: (family.must ? MUST : 1) * family.hours.low,
    })),
  );
  return bestRange(table, wishes).range;
}

/** A family that the choice must hold outweighs every other. */
const MUST = 1e6;

function scoreOf(
  world: World,
  candidate: Candidate,
  setting: Setting,
  slack: Score['slack'],
  inPlay: readonly InPlay[],
): Score {
  let [musts, sureHours, openHours] = [0, 0, 0];
  const served: InPlay[] = [];
  for (const each of inPlay) {
    const outcomes = judgeFamily(world, candidate, setting, each.family, SETTING_CHECKS);
    const verdict = worstOf([...each.fixed, ...outcomes]);
    if (verdict === 'fails') continue;
    served.push(each);
    openHours += each.family.hours.low;
    if (!passes(verdict)) continue;
    sureHours += each.family.hours.low;
    if (each.family.must) musts += 1;
  }
  const own = worstOf(judgeOwn(world, candidate, setting, OWN_CHECKS));
  const cases = served.flatMap(({ family }) =>
    family.cases.map((part) => caseOf(world, candidate, setting, part)),
  );
  return {
    setting,
    slack,
    ownPasses: passes(own) ? 2 : own === 'open' ? 1 : 0,
    musts,
    sureHours,
    openHours,
    stations: viseStations(cases)?.low ?? 0,
  };
}

/** The order in which settings are preferred. */
function isBetter(a: Score, b: Score): boolean {
  const differences = [
    a.ownPasses - b.ownPasses,
    a.musts - b.musts,
    nearly(a.sureHours - b.sureHours),
    nearly(a.openHours - b.openHours),
    b.setting.additions.length - a.setting.additions.length,
    b.setting.plates - a.setting.plates,
    a.stations - b.stations,
    nearly(Math.abs(b.setting.place.x) - Math.abs(a.setting.place.x)),
  ];
  return (differences.find((difference) => difference !== 0) ?? 0) > 0;
}

const nearly = (difference: number): number => (Math.abs(difference) < 1e-9 ? 0 : difference);
