import { anything, type Interval } from '../../quantities/interval.ts';
import type { Measure } from '../../questions/answers.ts';
import type { Candidate } from '../arranging/candidates.ts';
import type { Family } from '../arranging/family.ts';
import { groundOf, type World } from '../arranging/setting.ts';
import { stationsBeside } from '../arranging/setting-score.ts';
import type { SetUp } from '../arranging/setting-search.ts';
import { mostStations } from '../arranging/vise-stations.ts';
import type { Verdict } from '../decision.ts';
import { judgeOwn, LATE_CHECKS, worstOf } from '../judging/judge-family.ts';
import { type Outcome, passes, worse } from '../judging/outcome.ts';
import type { Value } from '../judging/value.ts';
import { capitalOf, type Worth, worthOf } from '../money/worth.ts';
import { coverageAtCorners, coverageOf } from './coverage.ts';
import { marginMeasure } from './margin-measure.ts';
import { type Priced, priceOf } from './price.ts';
import { swapHoursOf, swapsOf } from './swaps.ts';

/** What a measure may be, null where it does not exist (yet). */
export type MeasureValues = Readonly<Record<Measure, Interval | null>>;

export interface FamilyVerdict {
  readonly family: Family;
  readonly outcomes: readonly Outcome[];
  readonly verdict: Verdict;
}

/** One arrangement, judged and measured. */
export interface Judged {
  readonly id: string;
  readonly setUp: SetUp;
  readonly own: readonly Outcome[];
  readonly families: readonly FamilyVerdict[];
  readonly coverage: Interval;
  /** at each corner of the hours that are not known; null: all known, or no help */
  readonly coverageAt: readonly Interval[] | null;
  readonly verdict: Verdict;
  readonly passes: 'yes' | 'no' | 'open';
  readonly priced: Priced;
  /** lifts of the rotary a year, on or off */
  readonly swaps: Value;
  readonly worth: Worth;
  readonly measures: MeasureValues;
}

/** Judges all of a candidate as it is set up, and takes its measures. */
export function judgeSetUp(world: World, setUp: SetUp, owned: string): Judged {
  const { candidate } = setUp;
  const verdicts = verdictsOf(setUp);
  const covered = verdicts.filter(({ verdict }) => verdict !== 'fails');
  const outcomes = covered.flatMap((each) => each.outcomes);
  const priced = priceOf(setUp, outcomes, owned, world.shop.platePrice);
  const { money } = world.shop;
  const stations = stationsOf(world, setUp, covered);
  const swaps = swapsOf(world.shop, candidate.machine.builtIn, stations ?? NO_STATIONS);
  const ground = groundOf(world, candidate, setUp.setting, capitalOf(priced.total, money), swaps);
  const own = [...setUp.own, ...judgeOwn(world, ground, LATE_CHECKS)];
  const coverage = coverageOf(verdicts);
  const swapHours = swapHoursOf(world.shop, swaps);
  const { axes } = candidate.rotary;
  const worth = worthOf({ axes, families: verdicts, price: priced.total, swaps, swapHours }, world.shop);
  return {
    id: candidate.id,
    setUp,
    own,
    families: verdicts,
    coverage,
    coverageAt: coverageAtCorners(verdicts),
    verdict: covered.reduce<Verdict>((worst, each) => worse(worst, each.verdict), worstOf(own)),
    passes: passesWhen(own, verdicts, coverage, world.shop.assume.leastCoverage),
    priced,
    swaps,
    worth,
    measures: {
      coverage,
      viseStations: stations,
      payback: everPaysBack(worth) ? worth.payback : null,
      price: priced.total,
      floorArea: floorArea(candidate),
      swapHours,
      margin:
        setUp.unsettled || setUp.byVises.length > 0
          ? anything
          : marginMeasure(setUp.own, covered, world, setUp),
    },
  };
}

const verdictsOf = (setUp: SetUp): readonly FamilyVerdict[] =>
  setUp.families.map((each) => ({ ...each, verdict: verdictWithin(setUp, each) }));

/** Does it fail whatever it costs and however often it is lifted? Then nothing of it need be measured. */
export function failsAsSetUp({ shop }: World, setUp: SetUp): boolean {
  const verdicts = verdictsOf(setUp);
  return passesWhen(setUp.own, verdicts, coverageOf(verdicts), shop.assume.leastCoverage) === 'no';
}

/** While something is open, a family that fails as it is set up now may still hold with another setting. */
function verdictWithin(
  { unsettled, possible }: SetUp,
  { family, outcomes }: Omit<FamilyVerdict, 'verdict'>,
): Verdict {
  const verdict = worstOf(outcomes);
  return verdict === 'fails' && unsettled && possible.has(family) ? 'open' : verdict;
}

const NO_STATIONS: Interval = { low: 0, high: 0 };

/**
 * Any setting may turn out to be the best, and once more is known also a place that was not within reach of everything:
 * from none to the most that the table takes.
 */
function anyStations(world: World, { candidate, setting, tried }: SetUp): Interval {
  const most = [false, true].map((turned) =>
    mostStations(groundOf(world, candidate, { ...setting, place: { ...setting.place, turned } })),
  );
  return {
    low: 0,
    high: Math.max(...tried.map(({ stations }) => stations.high), ...most.map((each) => each ?? 0)),
  };
}

/** Null where the machine has no table of its own to put vises on. */
function stationsOf(world: World, setUp: SetUp, covered: readonly FamilyVerdict[]): Interval | null {
  const { candidate, setting, byVises, unsettled } = setUp;
  const served = covered.map(({ family, verdict }) => ({ family, sure: passes(verdict) }));
  const beside = stationsBeside(groundOf(world, candidate, setting), served);
  if (beside === null) return null;
  if (unsettled) return anyStations(world, setUp);
  // of those that are level the one with the most vises is chosen, whatever a vise turns out to measure
  return byVises
    .map((each) => stationsBeside(groundOf(world, candidate, each), served) ?? NO_STATIONS)
    .reduce(
      (most, each) => ({ low: Math.max(most.low, each.low), high: Math.max(most.high, each.high) }),
      beside,
    );
}

/** Its own checks hold, so do the families it must hold, and enough hours are covered. */
export function passesWhen(
  own: readonly Outcome[],
  families: readonly FamilyVerdict[],
  coverage: Interval,
  least: number,
): Judged['passes'] {
  const musts = [worstOf(own), ...families.filter(({ family }) => family.must).map(({ verdict }) => verdict)];
  if (musts.includes('fails') || coversTooLittle(coverage, least)) return 'no';
  return musts.every(passes) && coverage.low >= least - 1e-9 ? 'yes' : 'open';
}

/** Whatever the unknowns are, less of the hours than the least that makes it worth while. */
export const coversTooLittle = (coverage: Interval, least: number): boolean => coverage.high < least - 1e-9;

const everPaysBack = ({ payback }: Worth): boolean => Number.isFinite(payback.low);

const SQUARE_MM_PER_SQUARE_M = 1e6;

export function floorArea({ machine }: Candidate): Interval | null {
  const [along, across] = machine.row.footprint;
  if (along === 'unknown' || across === 'unknown') return { low: 0, high: Number.POSITIVE_INFINITY };
  const area = (along * across) / SQUARE_MM_PER_SQUARE_M;
  return { low: area, high: area };
}
