import type { Part } from '../../questions/answers.ts';
import { step } from '../formula/formula-source.ts';
import type { FormulaStep, GivenNumber } from '../formula/printed-formula.ts';

const SQUARE = 90;
const ANGLES: Readonly<Record<'top' | 'sides' | 'around', number>> = {
  top: 0,
  sides: SQUARE,
  around: SQUARE,
};

/** The greatest of the angles from which the tool comes; null: one is not known. `letter`: what the angles are called. */
export function tiltLines(
  { name, approaches }: Part,
  gives: string,
  { letter = 'w', words = 'greatest tilt that is asked for' } = {},
): { readonly symbols: readonly GivenNumber[]; readonly steps: readonly FormulaStep[] } | null {
  if (approaches === 'unknown') return null;
  const angles = approaches.map((each) => {
    if (typeof each === 'string')
      return { of: each, words: `tilt for what is cut from: ${each}`, value: ANGLES[each] };
    const of = 'slant' in each ? 'slant' : 'undercut';
    const value = 'slant' in each ? each.slant : each.undercut;
    return { of, words: `angle of the ${of}`, value };
  });
  const symbols = angles.flatMap(({ of, words, value }, index) =>
    typeof value === 'number'
      ? [
          {
            symbol: `${letter}${index + 1}`,
            words,
            unit: '°',
            input: `parts[${name}].approaches.${of}`,
            value,
          },
        ]
      : [],
  );
  if (symbols.length < angles.length) return null;
  const formula = `max(${['0', ...symbols.map(({ symbol }) => symbol)].join(', ')})`;
  return { symbols, steps: [step(gives, '°', words, formula)] };
}
