import { type Block, heading, paragraph } from '../../report/blocks/block.ts';
import { codeData, number, say, words } from '../../report/blocks/inline.ts';
import { sentenceCase } from '../../report/wording/sentence-case.ts';
import { CHECKS } from '../../rules/checks/index.ts';
import { at, type Explained, rootOf } from '../explained.ts';
import { ASSUMPTION_LESSONS, type AssumptionKey, type ShownBy } from '../words/assumptions.ts';
import { type Effect, effectOf } from './assumption-effect.ts';
import { ASSUMPTION_KEYS, assumptionAt, meaningOf } from './assumption-value.ts';
import { exampleDecision } from './base.ts';
import type { Topic } from './topic.ts';

/** Every assumption. */
export const assumptionTopics = (): readonly Topic[] =>
  ASSUMPTION_KEYS.map((id) => ({
    kind: 'assumption',
    id,
    title: sentenceCase(meaningOf(id)),
    explain: () => explainAssumption(id),
  }));

const ABOUT: Readonly<Record<Effect['about'], string>> = {
  need: 'what is needed',
  have: 'what there is',
  limit: 'the line',
  hours: 'hours saved a year',
  measure: 'the measure',
};

const whereOf = (shownBy: Exclude<ShownBy, { none: string }>): string => Object.values(shownBy)[0] ?? '';

/** In which the assumption enters, as it is written there. */
const formulaOf = (shownBy: ShownBy): string | null =>
  'check' in shownBy ? (CHECKS.find(({ id }) => id === shownBy.check)?.formula ?? null) : null;

function explainAssumption(id: AssumptionKey): Explained {
  const { plain, mistake, shownBy } = ASSUMPTION_LESSONS[id];
  const found = assumptionAt(id);
  const effect = 'none' in shownBy ? null : effectOf(id, shownBy);
  const [low = 0, high = 0] = found?.range ?? [];
  const formula = formulaOf(shownBy);
  const root = rootOf(exampleDecision(), {
    id,
    value: found?.value ?? null,
    low,
    high,
    effect,
    formula,
    where: 'none' in shownBy ? '' : whereOf(shownBy),
  });
  const unit = found?.unit ?? '';
  return {
    root,
    blocks: [
      heading(1, [words(sentenceCase(meaningOf(id)))]),
      paragraph(
        say`${codeData(at('id'))}, an assumption: a number without a source, which can be changed in the answers file.`,
      ),
      paragraph([words(plain)]),
      heading(2, say`Its value`),
      paragraph(
        found === null
          ? say`It is a word: good, fair or poor; fair is assumed.`
          : say`${number(at('value'), unit)}; it may be from ${number(at('low'), unit)} to ${number(at('high'), unit)}.`,
      ),
      heading(2, say`An example, worked out`),
      ...effectBlocks(shownBy, effect, unit, formula),
      heading(2, say`Sketch`),
      paragraph(say`None. It enters formulas whose checks are drawn.`),
      heading(2, say`The usual mistake`),
      paragraph([words(mistake)]),
      heading(2, say`Where it comes from`),
      paragraph(say`An assumption; it has no source.`),
    ],
  };
}

function effectBlocks(
  shownBy: ShownBy,
  effect: Effect | null,
  unit: string,
  formula: string | null,
): readonly Block[] {
  if ('none' in shownBy) return [paragraph(say`None. ${words(shownBy.none)}`)];
  const stands = formula === null ? [] : [paragraph(say`It stands in ${codeData(at('formula'))}.`)];
  if (effect === null) return stands;
  return [
    ...stands,
    paragraph(
      say`In an example of ${codeData(at('where'))}: with ${number(at('value'), unit)} ${words(ABOUT[effect.about])} is
        ${number(at('effect', 'before'), effect.unit)}; with ${number(at('effect', 'other'), unit)} it is
        ${number(at('effect', 'after'), effect.unit)}.`,
    ),
  ];
}
