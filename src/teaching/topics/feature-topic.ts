import { filled } from '../../report/arguments.ts';
import { type Block, heading, list, paragraph } from '../../report/blocks/block.ts';
import { codeData, data, type Inline, number, say, words } from '../../report/blocks/inline.ts';
import type { Path } from '../../report/blocks/path.ts';
import { FEATURE_NEED_WORDS, FEATURE_REASON_WORDS, FEATURE_WORDS } from '../../report/wording/features.ts';
import { sentenceCase } from '../../report/wording/sentence-case.ts';
import type { FeatureNeed } from '../../rules/decision.ts';
import { FEATURE_RULES } from '../../rules/features/index.ts';
import type { FeatureExample, FeatureRule } from '../../rules/features/rule.ts';
import { decisionOfRule } from '../examples/example-decision.ts';
import { at, type Explained, rootOf } from '../explained.ts';
import { FEATURE_LESSONS, type FeatureLesson } from '../words/features.ts';
import { featureNeedIn } from './feature-need.ts';
import type { Topic } from './topic.ts';

/** Every feature, in the order in which they are listed. */
export const featureTopics = (): readonly Topic[] =>
  FEATURE_RULES.map((rule) => ({
    kind: 'feature',
    id: rule.id,
    title: sentenceCase(FEATURE_WORDS[rule.id]),
    explain: () => explainFeature(rule),
  }));

/** How the number and the line of a feature decide. */
export const FEATURE_DECIDES: Readonly<Record<FeatureLesson['rule'], string>> = {
  'required above': 'N > L: required',
  'required if any': 'N > 0: required',
  'saves time': 'hours saved · shop rate · years ≥ price: it pays for itself',
  'worth having above': 'N > L: worth having',
};

/** The examples that come out differently, each once. */
function differing(examples: readonly FeatureExample[]): readonly FeatureExample[] {
  return examples.filter(({ need }, index) => examples.findIndex((each) => each.need === need) === index);
}

function explainFeature(rule: FeatureRule): Explained {
  const lesson = FEATURE_LESSONS[rule.id];
  const found = differing(rule.examples).map(({ given }) => {
    const decision = decisionOfRule(given);
    const need = featureNeedIn(decision, rule.id);
    if (need === undefined) throw new Error(`the example says nothing of ${rule.id}`);
    return { decision, need };
  });
  const [first] = found;
  if (first === undefined) throw new Error(`${rule.id} has no examples`);
  const root = rootOf(first.decision, {
    id: rule.id,
    source: rule.source,
    rule: FEATURE_DECIDES[lesson.rule],
    needs: found.map(({ need }) => need),
  });
  return {
    root,
    blocks: [
      heading(1, [words(sentenceCase(FEATURE_WORDS[rule.id]))]),
      paragraph(say`${codeData(at('id'))}, something to order with the machine, or to have.`),
      paragraph([words(lesson.plain)]),
      heading(2, say`The rule`),
      paragraph(
        say`${codeData(at('rule'))}; else ${words(lesson.otherwise)}. N: ${words(lesson.number)}. L: ${words(lesson.limit)}.`,
      ),
      heading(2, say`Examples, worked out`),
      list(
        found.map(({ need }, index): readonly Inline[] => {
          const own = at('needs', index);
          const reason = filled(root, FEATURE_REASON_WORDS[need.why], need, own);
          return say`${words(sentenceCase(FEATURE_NEED_WORDS[need.need]))}: N is ${number([...own, 'number'], need.unit)}, L is
            ${number([...own, 'limit'], need.unit)}: ${reason}.${saved(need, own)}`;
        }),
      ),
      heading(2, say`Sketch`),
      paragraph(say`None. It is a thing to order, not a size.`),
      heading(2, say`The usual mistake`),
      paragraph([words(lesson.mistake)]),
      heading(2, say`Where it comes from`),
      paragraph(say`${data(at('source'))}.`),
    ] satisfies readonly Block[],
  };
}

/** Hours, what they are worth, and the price. */
function saved(need: FeatureNeed, own: Path): readonly Inline[] {
  if (need.savesHours === null) return [];
  return say` It saves ${number([...own, 'savesHours'], 'h')} a year, worth ${number([...own, 'savesMoney'], 'money')} over the
    years; its price: ${number([...own, 'price'], 'money', { ifNull: 'ask the seller' })}.`;
}
