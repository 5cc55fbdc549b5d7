import type { Answers } from '../../questions/answers.ts';
import { groundOf, type World } from '../arranging/setting.ts';
import { type Score, spaceBeside } from '../arranging/setting-score.ts';
import type {
  Arrangement,
  CheckResult,
  Drop,
  Flip,
  Measures,
  Plate,
  TableSpaceShown,
  Tried,
  Verdict,
} from '../decision.ts';
import { judgeFamily, judgeOwn, OWN_CHECKS, PART_CHECKS, SETTING_CHECKS } from '../judging/judge-family.ts';
import { type Outcome, passes } from '../judging/outcome.ts';
import { traced } from '../judging/trace.ts';
import { bounded } from '../judging/value.ts';
import { shownMoney } from '../money/shown-money.ts';
import { featuresOf } from './features.ts';
import type { FamilyVerdict, Judged } from './judged.ts';
import { laterCost } from './later-cost.ts';
import { liftingOf } from './lifting.ts';
import { shownItems } from './price.ts';

/** What is known of an arrangement beside the others. */
export interface AmongOthers {
  readonly undominated: boolean;
  readonly dropped: Drop | null;
  readonly flips: readonly Flip[];
}

/** An arrangement as the decision shows it, every check traced. */
export function assembled(
  judged: Judged,
  { undominated, dropped, flips }: AmongOthers,
  answers: Answers,
  world: World,
  traces: boolean,
): Arrangement {
  const { setUp, own, families } = judged;
  const { candidate, setting } = setUp;
  const { place } = setting;
  return {
    id: judged.id,
    machine: candidate.machine.key,
    rotary: candidate.rotary.row?.id ?? null,
    class: candidate.rotary.class,
    mounting: candidate.mounting,
    place: candidate.machine.builtIn
      ? null
      : { x: place.x + 0, y: place.y + 0, slackX: finite(setUp.slack.x), slackY: finite(setUp.slack.y) },
    space: spaceOf(judged, world),
    turned: place.turned,
    clearance: setting.additions.map(({ kind }) => kind),
    plates: platesOf(judged, world),
    tried: triedOf(judged, world, traces),
    verdict: judged.verdict,
    passes: judged.passes,
    parts: Object.fromEntries(
      families.map(({ family, verdict }): [string, Verdict] => [family.name, verdict]),
    ),
    measures: measuresOf(judged),
    prices: shownItems(judged.priced),
    features: featuresOf(judged, answers, world.shop),
    later: laterCost(judged, answers, world.shop.platePrice),
    lifting: liftingOf(judged, world),
    money: shownMoney(judged, world.shop.money),
    checks: traces
      ? [
          ...own.map((outcome): CheckResult => traced(outcome, null)),
          ...families.flatMap((each) => tracedFamily(world, judged, each)),
        ]
      : [],
    undominated,
    dropped,
    flips,
  };
}

/** The checks of one family; where its kinds are open, judged again over all of them. */
function tracedFamily(
  world: World,
  { setUp }: Judged,
  { family, outcomes }: FamilyVerdict,
): readonly CheckResult[] {
  const whole = outcomes.some(({ partial }) => partial)
    ? judgeFamily(world, groundOf(world, setUp.candidate, setUp.setting), family, PART_CHECKS, true)
    : outcomes;
  return whole.map((outcome) => traced(outcome, family.name));
}

function spaceOf({ setUp, families }: Judged, world: World): TableSpaceShown | null {
  const covered = families.flatMap(({ family, verdict }) =>
    verdict === 'fails' ? [] : [{ family, sure: passes(verdict) }],
  );
  const space = spaceBeside(groundOf(world, setUp.candidate, setUp.setting), covered);
  if (space === null) return null;
  const { left, right, stationsLeft, stationsRight } = space;
  return {
    left: bounded(left),
    right: bounded(right),
    stationsLeft: bounded(stationsLeft),
    stationsRight: bounded(stationsRight),
  };
}

const finite = (value: number): number => (Number.isFinite(value) ? value : 0);

function platesOf({ setUp: { candidate, setting }, own }: Judged, world: World): readonly Plate[] {
  if (setting.plates === 0) return [];
  const of = groundOf(world, candidate, setting);
  const adapts = own.some(({ easing }) => easing === 'adapter-plate');
  const why = adapts && setting.plates === world.shop.assume.plateThickness ? 'adapter' : 'riser';
  return [{ under: 'rotary', thickness: setting.plates, why, mass: bounded(of.plateMass) }];
}

/** Each stack that was tried, once, with the most hours that it surely holds anywhere on the table. */
function triedOf(judged: Judged, world: World, traces: boolean): readonly Tried[] {
  const stacks = new Map<string, Score>();
  for (const score of judged.setUp.tried) {
    const name = `${clearanceOf(score).join('+')}/${score.setting.plates}`;
    const known = stacks.get(name);
    if (known === undefined || known.sureHours < score.sureHours) stacks.set(name, score);
  }
  return [...stacks.values()].map((score) => ({
    clearance: clearanceOf(score),
    plates: score.setting.plates === 0 ? [] : [score.setting.plates],
    sureHours: score.sureHours,
    stops: traces ? stopsOf(judged, score, world) : [],
  }));
}

const clearanceOf = ({ setting }: Score) => setting.additions.map(({ kind }) => kind);

/** What fails or is open as it is set up there: checks of the arrangement itself, and of its families. */
function stopsOf(
  { setUp: { candidate }, families }: Judged,
  { setting }: Score,
  world: World,
): Tried['stops'] {
  const ground = groundOf(world, candidate, setting);
  const against = (outcomes: readonly Outcome[], part: string | null): Tried['stops'] =>
    outcomes.flatMap(({ check, verdict, advisory }) =>
      advisory || passes(verdict) ? [] : [{ check: check.id, part }],
    );
  return [
    ...against(judgeOwn(world, ground, OWN_CHECKS), null),
    ...families.flatMap(({ family }) =>
      against(judgeFamily(world, ground, family, SETTING_CHECKS), family.name),
    ),
  ];
}

function measuresOf({ measures, worth }: Judged): Measures {
  const show = (key: keyof typeof measures) => {
    const value = measures[key];
    return value === null ? null : bounded(value);
  };
  return {
    coverage: show('coverage'),
    viseStations: show('viseStations'),
    price: show('price'),
    payback: show('payback'),
    netPresentValue: bounded(worth.netPresentValue),
    floorArea: show('floorArea'),
    swapHours: show('swapHours'),
    margin: show('margin'),
  };
}
