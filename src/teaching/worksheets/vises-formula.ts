import type { Arrangement, Decision } from '../../rules/decision.ts';
import { step } from '../formula/formula-source.ts';
import { known, type Lines } from './sheet-formula.ts';

/** Whole vises with their gaps on what stays free of the table; null: there is no table beside it, or a length is not known. */
export function visesFormula({ machine, space }: Arrangement, { inputs }: Decision, gives: string): Lines {
  const row = inputs.catalog.machines.find(({ id }) => id === machine);
  if (space === null || row === undefined || row.table === null) return null;
  const of = (key: string): string => `machines[${machine}].${key}`;
  const length = (symbol: string, words: string, input: string, value: unknown) => ({
    symbol,
    words,
    unit: 'mm',
    input,
    value,
  });
  const symbols = known([
    length('f_l', 'table that stays free on the left', 'space.left', space.left),
    length('f_r', 'table that stays free on the right', 'space.right', space.right),
    length('t_x', 'length of the table', of('table.size[0]'), row.table.size[0]),
    length('X', 'X travel', of('travel[0]'), row.travel[0]),
    length('v', 'width of a vise', 'work.vise.width', inputs.answers.work.vise.width),
    length('g', 'gap beside a vise', 'assume.viseGap', inputs.assume.viseGap),
  ]);
  if (symbols === null) return null;
  const count = (free: string): string => `max(0, floor((${free} - o + g)/(v + g) + 0.000000001))`;
  return {
    symbols,
    steps: [
      step('o', 'mm', 'what of the table no tool reaches, on each side', 'max(0, (t_x - X)/2)'),
      step('V_l', '', 'vises on the left', count('f_l')),
      step('V_r', '', 'vises on the right', count('f_r')),
      step(gives, '', 'vises beside the rotary', 'V_l + V_r'),
    ],
  };
}
