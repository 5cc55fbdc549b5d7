import { all, create, type FactoryFunctionMap } from 'mathjs';
import type { PrintedFormula } from '../../src/teaching/formula/printed-formula.ts';

const math = create(all as FactoryFunctionMap);
const degrees = (angle: number): number => (angle * 180) / Math.PI;
const radians = (angle: number): number => (angle * Math.PI) / 180;

/** What formulas mean by these names: angles in degrees, and a choice as in a spreadsheet. */
const MEANINGS = {
  sin: (angle: number) => Math.sin(radians(angle)),
  cos: (angle: number) => Math.cos(radians(angle)),
  tan: (angle: number) => Math.tan(radians(angle)),
  acos: (value: number) => degrees(Math.acos(value)),
  atan2: (up: number, out: number) => degrees(Math.atan2(up, out)),
  if: (so: unknown, then: number, otherwise: number) => (so === true || so === 1 ? then : otherwise),
};

/** As it is printed, and back to what a calculator takes. */
export const typed = (printed: string): string =>
  printed
    .replaceAll('π', 'pi')
    .replaceAll('·', '*')
    .replaceAll('−', '-')
    .replaceAll('²', '^2')
    .replaceAll('√(', 'sqrt(')
    .replaceAll('≤', '<=')
    .replaceAll('≥', '>=');

/** Works a formula out with another program than the one that is tested. */
export function byMathjs(
  { definitions, steps, need, have }: Pick<PrintedFormula, 'definitions' | 'steps' | 'need' | 'have'>,
  given: Readonly<Record<string, number>>,
): { readonly need: number; readonly have: number } {
  const parser = math.parser();
  for (const [name, meaning] of Object.entries(MEANINGS)) parser.set(name, meaning);
  for (const [name, value] of Object.entries(given)) parser.set(name, value);
  for (const each of definitions)
    parser.evaluate(`${each.name}(${each.of.join(', ')}) = ${typed(each.formula)}`);
  for (const each of steps) parser.evaluate(`${each.gives} = ${typed(each.formula)}`);
  return { need: Number(parser.get(need)), have: Number(parser.get(have)) };
}
