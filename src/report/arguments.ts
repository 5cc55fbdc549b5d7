import type { Argument, Decision } from '../rules/decision.ts';
import { enumerate, type Inline, number, say, words } from './blocks/inline.ts';
import type { Path } from './blocks/path.ts';
import { partName } from './names.ts';
import { valueName } from './value-name.ts';

type Line = readonly Inline[];

/** A sentence whose places for numbers and names are filled from the decision. */
export function filled(
  decision: Decision,
  wording: string,
  { unit, parts }: Pick<Argument<string>, 'unit' | 'parts'>,
  path: Path,
): Line {
  return wording.split(/(\{\w+\})/).flatMap((piece): Line => {
    if (piece === '{number}' || piece === '{limit}') return [number([...path, piece.slice(1, -1)], unit)];
    if (piece === '{parts}')
      return parts.length === 0
        ? [words('none in particular')]
        : enumerate(parts.map((part, index) => partName(decision, part, [...path, 'parts', index])));
    return piece === '' ? [] : [words(piece)];
  });
}

/** One reason as a line: what is open names what decides. */
export function argumentLine(
  decision: Decision,
  wording: string,
  argument: Argument<string>,
  path: Path,
): Line {
  const sentence = filled(decision, wording, argument, path);
  if (argument.sure) return sentence;
  const open = argument.openOn
    .slice(0, MOST_OPEN)
    .map((answer, index) => valueName(decision, answer, [...path, 'openOn', index]));
  const decides = open.length === 0 ? [] : say` (it depends on ${enumerate(open)})`;
  return argument.side === 'rules out'
    ? say`perhaps ruled out: ${sentence}${decides}`
    : say`perhaps: ${sentence}${decides}`;
}

/** More unknowns than these in one line are not read. */
const MOST_OPEN = 3;
