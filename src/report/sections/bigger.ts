import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { arrangementName, partName } from '../names.ts';

/** Why not a size larger: what it would add in hours, and what it would cost in price, mass and room. */
export function bigger(decision: Decision): readonly Block[] {
  const { bigger: found } = decision;
  if (found === null) return [];
  const chosen = number(['bigger', 'chosen', 'swing'], 'mm');
  const title = heading(2, say`Would a bigger one help?`);
  if (found.next === null)
    return [title, paragraph(say`It turns ${chosen}; nothing of its kind in this catalog turns more.`)];
  const at = (key: string): Path => ['bigger', 'next', key];
  const name = arrangementName(decision, found.next.best, at('best'));
  const than = (key: 'morePrice' | 'moreMass' | 'moreLength', unit: string, more: string, less: string) => {
    const value = found.next?.[key];
    const word = typeof value === 'number' && value < 0 ? less : more;
    return say`${number(at(key), unit, { ifNull: 'an amount that is not known', magnitude: true })} ${words(word)}`;
  };
  const costs = say`By itself it costs ${than('morePrice', 'money', 'more', 'less')}, weighs ${than('moreMass', 'kg', 'more', 'less')}
    and is ${than('moreLength', 'mm', 'longer', 'shorter')} on the table.`;
  return [
    title,
    paragraph(
      say`The one that is recommended turns ${chosen}, the next size of its kind ${number(at('swing'), 'mm')}
        (${name}). ${added(decision, found.next.addsParts)} ${costs}`,
    ),
    paragraph(withIt(found.next.bestPasses)),
  ];
}

function added(decision: Decision, parts: readonly string[]): readonly Inline[] {
  if (parts.length === 0)
    return say`A bigger one would not help: no family needs more swing than the first and turns within the second.`;
  const names = enumerate(
    parts.map((part, index) => partName(decision, part, ['bigger', 'next', 'addsParts', index])),
  );
  return say`By its swing it would add ${names}: ${number(['bigger', 'next', 'addsHours'], 'h')} a year,
    ${number(['bigger', 'next', 'addsShare'], 'share')} of the five-axis hours.`;
}

function withIt(passes: 'yes' | 'open' | 'no'): readonly Inline[] {
  const all = say`All checks taken together that one holds ${number(['bigger', 'next', 'coverage'], 'share')} of the hours,
    against ${number(['bigger', 'coverage'], 'share')}, and leaves room for this many vises:
    ${number(['bigger', 'next', 'viseStations'], '', { ifNull: 'not known' })}, against
    ${number(['bigger', 'viseStations'], '', { ifNull: 'not known' })}.`;
  return passes === 'no' ? say`${all} As it stands it does not pass.` : all;
}
