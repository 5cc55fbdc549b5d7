import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, paragraph, table } from '../blocks/block.ts';
import { data, type Inline, say, words } from '../blocks/inline.ts';
import { CLASS_WORDS } from '../wording/arrangement.ts';

/** The kinds of rotary, with what speaks for and against each: none disappears without a reason. */
export function classes(decision: Decision): readonly Block[] {
  if (decision.classes.length === 0) return [];
  const reasons = (index: number, side: 'for' | 'against', count: number): readonly Inline[] =>
    Array.from({ length: count }, (_, place) => data(['classes', index, side, place])).flatMap(
      (each, place) => (place === 0 ? [each] : [words('; '), each]),
    );
  return [
    heading(2, say`Kinds of rotary`),
    paragraph(say`What the parts ask for decides the kind before any single rotary is looked at.`),
    table(
      [
        [say`Kind`, 'left'],
        [say`Finding`, 'left'],
        [say`For`, 'left'],
        [say`Against`, 'left'],
      ],
      decision.classes.map((row, index) => [
        [words(CLASS_WORDS[row.class].title)],
        [data(['classes', index, 'finding'])],
        reasons(index, 'for', row.for.length),
        reasons(index, 'against', row.against.length),
      ]),
    ),
  ];
}
