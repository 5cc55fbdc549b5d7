import { type Block, heading, paragraph } from '../../report/blocks/block.ts';
import { codeData, data, say, words } from '../../report/blocks/inline.ts';
import { sentenceCase } from '../../report/wording/sentence-case.ts';
import type { Explained } from '../explained.ts';
import { at, rootOf } from '../explained.ts';
import { TERM_IDS, TERMS, type TermId } from '../words/terms.ts';
import { exampleDecision } from './base.ts';
import { checkExample } from './check-topic.ts';
import type { Topic } from './topic.ts';

/** Every word of the glossary. */
export const termTopics = (): readonly Topic[] =>
  TERM_IDS.map((id) => ({
    kind: 'term',
    id,
    title: sentenceCase(TERMS[id].name),
    explain: () => explainTerm(id),
  }));

function explainTerm(id: TermId): Explained {
  const { name, plain, mistake, shownBy } = TERMS[id];
  const shown = typeof shownBy === 'string' ? checkExample(shownBy) : null;
  const worked = { ...(shown?.worked ?? {}), termId: id, shownBy };
  const head: readonly Block[] = [
    heading(1, [words(sentenceCase(name))]),
    paragraph(say`${codeData(at('termId'))}, a word of the glossary.`),
    paragraph([words(plain)]),
    heading(2, say`The usual mistake`),
    paragraph([words(mistake)]),
  ];
  if (shown === null)
    return {
      root: rootOf(exampleDecision(), worked),
      blocks: [
        ...head,
        heading(2, say`Formula, example and sketch`),
        paragraph(say`None. ${words(typeof shownBy === 'string' ? '' : shownBy.none)}`),
        heading(2, say`Where it comes from`),
        paragraph(say`A word of the trade; common practice, no source.`),
      ],
    };
  return {
    root: rootOf(shown.decision, worked),
    blocks: [
      ...head,
      heading(2, say`At work`),
      paragraph(say`The check ${codeData(at('shownBy'))} shows it.`),
      ...shown.blocks,
      heading(2, say`Where it comes from`),
      paragraph(say`${data(at('source'))}.`),
    ],
  };
}
