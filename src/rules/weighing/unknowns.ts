import type { Measure } from '../../questions/answers.ts';
import { groundOf, type World } from '../arranging/setting.ts';
import type { CheckId } from '../checks/ids.ts';
import type { Gap, Unknown } from '../decision.ts';
import { judgeFamily, judgeOwn, OWN_CHECKS, SETTING_CHECKS } from '../judging/judge-family.ts';
import { gapsOf, type Outcome } from '../judging/outcome.ts';
import type { Judged } from './judged.ts';
import { marginGaps } from './margin-gaps.ts';
import { openMeasures } from './open-measures.ts';

interface Found {
  readonly gap: Gap;
  decides: boolean;
  readonly checks: Set<CheckId>;
  mentions: number;
}

/**
 * What is not known and leaves something open: of the arrangements worth reading, those that decide first.
 * An unknown decides when the result is open and it stands in an open verdict, or in the hours or the price,
 * of an arrangement that may still win.
 */
export function unknownsOf(
  reading: readonly Judged[],
  contenders: ReadonlySet<string>,
  isOpen: boolean,
  world: World,
  matters: readonly Measure[],
): readonly Unknown[] {
  const found = new Map<string, Found>();
  const note = (gap: Gap, decides: boolean, check: CheckId | null): void => {
    const known = found.get(gap.path) ?? { gap, decides: false, checks: new Set<CheckId>(), mentions: 0 };
    known.decides ||= decides;
    known.mentions += 1;
    if (check !== null) known.checks.add(check);
    found.set(gap.path, known);
  };
  for (const judged of reading) {
    const mayWin = isOpen && contenders.has(judged.id);
    const outcomes = [...judged.own, ...judged.families.flatMap((each) => each.outcomes)];
    for (const outcome of outcomes) noteOutcome(outcome, mayWin, note);
    if (mayWin) for (const outcome of otherSettings(judged, world)) noteOutcome(outcome, true, note);
    for (const { measure, gaps } of openMeasures(judged, world)) {
      const counts = measure !== 'payback' || matters.includes(measure);
      // what leaves the money open is told of whoever is read
      const isMoney = measure === 'price' || measure === 'payback';
      if (counts && (mayWin || isMoney)) for (const gap of gaps) note(gap, mayWin, null);
    }
  }
  if (isOpen && [...found.values()].every(({ decides }) => !decides))
    for (const judged of reading)
      if (contenders.has(judged.id)) for (const gap of marginGaps(judged)) note(gap, true, null);
  return [...found.values()].sort(byWeight).map(({ gap, decides, checks }) => ({
    answer: gap.path,
    decides,
    ask: gap.ask === 'user' ? 'you' : 'seller',
    checks: [...checks],
  }));
}

/** While it is open which setting is best, what is open in the others decides too: their price, place and margin. */
export function otherSettings({ setUp }: Judged, world: World): readonly Outcome[] {
  if (!setUp.unsettled) return [];
  return setUp.tried
    .filter(({ unsure, ownPasses }) => unsure || ownPasses === 1)
    .flatMap(({ setting }) => {
      const ground = groundOf(world, setUp.candidate, setting);
      return [
        ...judgeOwn(world, ground, OWN_CHECKS),
        ...setUp.families.flatMap(({ family }) => judgeFamily(world, ground, family, SETTING_CHECKS)),
      ];
    });
}

function noteOutcome(
  outcome: Outcome,
  mayWin: boolean,
  note: (gap: Gap, decides: boolean, check: CheckId) => void,
): void {
  for (const { gaps } of outcome.alsoAsked) for (const gap of gaps) note(gap, false, outcome.check.id);
  if (outcome.verdict !== 'open') return;
  for (const gap of gapsOf(outcome)) note(gap, mayWin && !outcome.advisory, outcome.check.id);
}

const byWeight = (a: Found, b: Found): number =>
  Number(b.decides) - Number(a.decides) ||
  Number(a.gap.ask === 'seller') - Number(b.gap.ask === 'seller') ||
  b.mentions - a.mentions ||
  (a.gap.path < b.gap.path ? -1 : 1);
