import { splitValuePath } from '../../report/value-words.ts';
import type { GivenNumber } from '../formula/printed-formula.ts';
import type { SheetFormula } from './sheet-formula.ts';

/** Whose numbers a table of a sheet holds. */
const GIVEN_KINDS = [
  'part',
  'rotary',
  'kind',
  'machine',
  'arrangement',
  'shop',
  'material',
  'assumption',
] as const;
type GivenKind = (typeof GIVEN_KINDS)[number];

/** A given number under a label by which steps call it: `B3`. */
interface GivenLine extends Omit<GivenNumber, 'symbol'> {
  readonly label: string;
}

/** One table of given numbers. */
export interface GivenGroup {
  readonly kind: GivenKind;
  /** name of the part, id of the row or the arrangement, of the material; empty where there is only one */
  readonly id: string;
  readonly letter: string;
  readonly lines: readonly GivenLine[];
}

interface Owner {
  readonly kind: GivenKind;
  readonly id: string;
}

/** A step's formula with the arrangement that it is about. */
export interface StepGiven {
  readonly formula: SheetFormula;
  readonly arrangement: string;
}

/** Whose number a path names. Example: `rotaries[lapwing].swing` → the rotary lapwing. */
function ownerOf(input: string, arrangement: string): Owner {
  const { list, name } = splitValuePath(input);
  if (list === 'parts') return { kind: 'part', id: name };
  if (list === 'rotaries') return { kind: 'rotary', id: name };
  if (list === 'machines') return { kind: 'machine', id: name };
  const [, kind] = /^kinds\[([\w-]+)\]/.exec(input) ?? [];
  if (kind !== undefined) return { kind: 'kind', id: kind };
  const [first = '', second = ''] = input.split('.');
  if (first === 'assume') return { kind: 'assumption', id: '' };
  if (first === 'materials') return { kind: 'material', id: second };
  if (OF_THE_SHOP.has(first)) return { kind: 'shop', id: '' };
  return { kind: 'arrangement', id: arrangement };
}

const OF_THE_SHOP: ReadonlySet<string> = new Set(['shop', 'tools', 'work', 'money', 'control']);

/**
 * Every number that the formulas of a sheet need, each once, by whose it is. `also`: owners that have a table in any case, for
 * what is said of them in words.
 */
export function givenGroups(steps: readonly StepGiven[], also: readonly Owner[]): readonly GivenGroup[] {
  const owners = new Map<string, Owner & { readonly symbols: GivenNumber[] }>();
  const tableOf = (owner: Owner) => {
    const key = keyOf(owner);
    const found = owners.get(key) ?? { ...owner, symbols: [] };
    owners.set(key, found);
    return found;
  };
  for (const owner of also) tableOf(owner);
  for (const { formula, arrangement } of steps)
    for (const symbol of formula.symbols) {
      if (formula.from?.[symbol.symbol] !== undefined) continue;
      const { symbols } = tableOf(ownerOf(symbol.input, arrangement));
      if (!symbols.some((each) => isSame(each, symbol))) symbols.push(symbol);
    }
  const inOrder = [...owners.values()].toSorted(
    (a, b) => GIVEN_KINDS.indexOf(a.kind) - GIVEN_KINDS.indexOf(b.kind),
  );
  let lettered = 0;
  return inOrder.map(({ kind, id, symbols }) => {
    // a table of words alone has no labels
    const letter = symbols.length === 0 ? '' : lettersOf(lettered++);
    const lines = symbols.map(({ words, unit, value, input }, index) => ({
      label: `${letter}${index + 1}`,
      words,
      unit,
      value,
      input,
    }));
    return { kind, id, letter, lines };
  });
}

/** The label of a number that a step needs. Throws where no table holds it: a fault of the sheet. */
export function labelOf(groups: readonly GivenGroup[], symbol: GivenNumber, arrangement: string): string {
  const key = keyOf(ownerOf(symbol.input, arrangement));
  const line = groups.find((each) => keyOf(each) === key)?.lines.find((each) => isSame(each, symbol));
  if (line === undefined) throw new RangeError(`no table gives ${symbol.input}`);
  return line.label;
}

const keyOf = ({ kind, id }: Owner): string => `${kind} ${id}`;

/** The same path may be another number on another arrangement, or seen from another side. */
const isSame = (
  a: Pick<GivenNumber, 'input' | 'unit' | 'value'>,
  b: Pick<GivenNumber, 'input' | 'unit' | 'value'>,
): boolean => a.input === b.input && a.unit === b.unit && a.value === b.value;

const LETTERS = 26;

/** Example: lettersOf(0) → 'A', lettersOf(26) → 'AA'. */
function lettersOf(index: number): string {
  const last = String.fromCharCode(65 + (index % LETTERS));
  return index < LETTERS ? last : `${lettersOf(Math.floor(index / LETTERS) - 1)}${last}`;
}
