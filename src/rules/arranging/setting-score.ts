import type { Interval } from '../../quantities/interval.ts';
import type { Verdict } from '../decision.ts';
import type { Case } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { familyVerdict, judgeOwn, OWN_SETTING_CHECKS, worstOf } from '../judging/judge-family.ts';
import { passes } from '../judging/outcome.ts';
import type { Family } from './family.ts';
import { type Setting, type World, withPart } from './setting.ts';
import { type TableSpace, tableSpace, viseStations, type Work } from './vise-stations.ts';

/** What a way of setting up a candidate wins. */
export interface Score {
  readonly setting: Setting;
  readonly slack: { readonly x: number; readonly y: number };
  readonly ownPasses: number;
  /** how many of its own checks fail */
  readonly ownFails: number;
  readonly musts: number;
  readonly sureHours: number;
  readonly openHours: number;
  /** some family may be held or not */
  readonly unsure: boolean;
  readonly stations: Interval;
}

/** A family with the verdict that holds whatever the setting is. */
export interface InPlay {
  readonly family: Family;
  readonly fixed: Verdict;
}

/** Judges the families in play on the checks that the setting changes; the last sums up what is won. */
export function scoreOf(
  world: World,
  ground: Case,
  setting: Setting,
  slack: Score['slack'],
  inPlay: readonly InPlay[],
  checks: readonly Check[],
): Score {
  let [musts, sureHours, openHours] = [0, 0, 0];
  const served: Served[] = [];
  for (const { family, fixed } of inPlay) {
    const verdict = familyVerdict(world, ground, family, checks);
    if (verdict === 'fails') continue;
    const sure = passes(verdict) && passes(fixed);
    served.push({ family, sure });
    openHours += family.hours.low;
    if (!sure) continue;
    sureHours += family.hours.low;
    if (family.must) musts += 1;
  }
  // what no setting changes cannot tell settings apart
  const outcomes = judgeOwn(world, ground, OWN_SETTING_CHECKS);
  const own = worstOf(outcomes);
  return {
    setting,
    slack,
    ownPasses: passes(own) ? 2 : own === 'open' ? 1 : 0,
    // a ceiling that is too low for all of them is no reason to leave out the plate that the slots ask for
    ownFails: outcomes.filter(({ advisory, verdict }) => !advisory && verdict === 'fails').length,
    musts,
    sureHours,
    openHours,
    unsure: served.some(({ sure }) => !sure),
    stations: stationsBeside(ground, served) ?? NO_STATIONS,
  };
}

const NO_STATIONS: Interval = { low: 0, high: 0 };
interface Served {
  readonly family: Family;
  readonly sure: boolean;
}

/** Vise stations beside these families; a built-in table has as many as its faceplate takes. */
export const stationsBeside = (ground: Case, served: readonly Served[]): Interval | null =>
  viseStations(ground, worksOf(ground, served));

/** What stays free of the table beside these families, and the vises on each side of it. */
export const spaceBeside = (ground: Case, served: readonly Served[]): TableSpace | null =>
  tableSpace(ground, worksOf(ground, served));

const worksOf = (ground: Case, served: readonly Served[]): readonly Work[] =>
  served.map(({ family, sure }) => ({ cases: family.cases.map((part) => withPart(ground, part)), sure }));

/** What a setting wins before vises count: the first that is not zero says which of the two is preferred. */
const beforeVises = (a: Score, b: Score): readonly number[] => [
  a.ownPasses - b.ownPasses,
  b.ownFails - a.ownFails,
  a.musts - b.musts,
  nearly(a.sureHours - b.sureHours),
  nearly(a.openHours - b.openHours),
  b.setting.additions.length - a.setting.additions.length,
  b.setting.plates - a.setting.plates,
];

/**
 * The order in which settings are preferred: its own checks, the fewest of them that fail, the families it must hold,
 * hours that surely hold, hours that may, fewest additions, thinnest plates, most vise stations, nearest the middle.
 */
function isBetter(a: Score, b: Score): boolean {
  const differences = [
    ...beforeVises(a, b),
    a.stations.low - b.stations.low,
    nearly(Math.abs(b.setting.place.x) - Math.abs(a.setting.place.x)),
  ];
  return (differences.find((difference) => difference !== 0) ?? 0) > 0;
}

export const best = (scores: readonly [Score, ...Score[]]): Score =>
  scores.reduce((a, b) => (isBetter(b, a) ? b : a));

/**
 * Settings that are as good as the chosen one up to the vises, and may have as many of them: while the size of a vise is
 * open any of these may turn out to be the one that is chosen. None where the vises of all of them are known.
 */
export function asGoodUpToVises(chosen: Score, tried: readonly Score[]): readonly Score[] {
  const level = tried.filter(
    (each) =>
      each !== chosen &&
      each.stations.high >= chosen.stations.low &&
      beforeVises(each, chosen).every((difference) => difference === 0),
  );
  return [chosen, ...level].some(({ stations }) => stations.low < stations.high) ? level : [];
}

const nearly = (difference: number): number => (Math.abs(difference) < 1e-9 ? 0 : difference);
