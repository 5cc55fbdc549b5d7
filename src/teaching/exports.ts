import type { LengthUnits } from '../quantities/kinds.ts';
import type { Block } from '../report/blocks/block.ts';
import { type FigureFile, figureFilesOf } from '../report/exports/figure-files.ts';
import { markdownOf } from '../report/exports/markdown.ts';
import { type TextLook, textLines } from '../report/exports/text-blocks.ts';
import type { Explained, Root } from './explained.ts';
import { TOPICS } from './topics/index.ts';
import { TOPIC_KINDS, type Topic, type TopicKind } from './topics/topic.ts';

/** An explanation in the units that are asked for. */
function inUnits(
  { root, blocks }: Explained,
  shownIn: LengthUnits,
): { readonly root: Root; readonly blocks: readonly Block[] } {
  return { root: { ...root, inputs: { ...root.inputs, shownIn } }, blocks };
}

/** An explanation as lines of text. */
export function explanationLines(
  explained: Explained,
  look: TextLook,
  shownIn: LengthUnits = 'mm',
): readonly string[] {
  const { root, blocks } = inUnits(explained, shownIn);
  return textLines(blocks, root, look);
}

/** An explanation as Markdown; its sketch is in the folder that is named, else it is told in words. Ends with one line break. */
export function explanationMarkdown(
  explained: Explained,
  figures: string | null = null,
  shownIn: LengthUnits = 'mm',
): string {
  const { root, blocks } = inUnits(explained, shownIn);
  return markdownOf(blocks, root, figures);
}

/** The sketches of an explanation as SVG. */
export function explanationFigures(explained: Explained, shownIn: LengthUnits = 'mm'): readonly FigureFile[] {
  const { root, blocks } = inUnits(explained, shownIn);
  return figureFilesOf(blocks, root);
}

const HEADINGS: Readonly<Record<TopicKind, string>> = {
  check: 'Checks',
  stage: 'Stages of the decision',
  'class rule': 'Rules of the kind of rotary',
  'route rule': 'Rules of the way to five axes',
  feature: 'Features',
  assumption: 'Assumptions',
  term: 'Words',
};

/** Everything that can be explained, by kind: a heading, and each name with its title. */
export const topicList = (): readonly { readonly heading: string; readonly topics: readonly Topic[] }[] =>
  TOPIC_KINDS.map((kind) => ({
    heading: HEADINGS[kind],
    topics: TOPICS.filter((each) => each.kind === kind),
  }));
