import { printable } from '../../documents/printable.ts';
import type { LengthUnits } from '../../quantities/kinds.ts';
import { explanationLines, topicList } from '../../teaching/exports.ts';
import { findTopics } from '../../teaching/find-topic.ts';
import { paragraph } from './paragraph.ts';

/** What a name means, or what can be explained; pictures are told in words. */
export function explainLines(
  name: string,
  look: { readonly width: number; readonly ascii: boolean },
  units: LengthUnits,
): readonly string[] {
  const { width } = look;
  if (name === '') {
    return topicList().flatMap(({ heading, topics }) =>
      paragraph(`${heading}: ${topics.map(({ id }) => id).join(', ')}.`, width),
    );
  }
  const { found, meant } = findTopics(name);
  const [topic] = found;
  if (topic !== undefined) return explanationLines(topic.explain(), look, units);
  const hint = meant === undefined ? '' : ` Did you mean ${meant}?`;
  return paragraph(printable(`There is nothing called "${name}".${hint} "explain" lists all.`), width);
}
