import { quoted } from '../../documents/printable.ts';
import type { ImportField } from '../fields/import-field.ts';
import type { CellContext, CellReading } from './cell-reading.ts';

type Read = (text: string, field: ImportField, context: CellContext) => CellReading;
/** What stands in one place of a pattern, and how it is read. */
type Part = readonly [key: string, cell: ImportField['cell'] | 'word'];

interface Pattern {
  readonly form: RegExp;
  readonly parts: readonly Part[];
  readonly example: string;
}

const LENGTH = { form: 'quantity', of: 'length' } as const;
const RANGE = { form: 'range', of: 'length' } as const;

/** How the things are written that a cell may hold several of, with semicolons between them. */
const PATTERNS: Readonly<Record<'boxes' | 'additions', Pattern>> = {
  boxes: {
    form: /^along (.+?), across (.+?), top (.+)$/i,
    parts: [
      ['along', RANGE],
      ['across', RANGE],
      ['top', LENGTH],
    ],
    example: 'along -140 … -70, across -130 … 130, top 150; …',
  },
  additions: {
    form: /^(.+?) adds (.+?)(?:, price (.+?))?(?:, height (.+?))?$/i,
    parts: [
      ['kind', 'word'],
      ['adds', LENGTH],
      ['price', { form: 'quantity', of: 'money' }],
      ['height', LENGTH],
    ],
    example: 'lowered-table adds 75, price 3200; …',
  },
};

/** Several things in one cell, each a map of a catalog row. A part that is not known is left out. */
export function readList(
  text: string,
  form: 'boxes' | 'additions',
  context: CellContext,
  read: Read,
): CellReading {
  const { form: pattern, parts, example } = PATTERNS[form];
  const maps: Readonly<Record<string, unknown>>[] = [];
  for (const each of text.split(/\s*;\s*/)) {
    const found = pattern.exec(each);
    if (found === null) {
      return {
        ok: false,
        why: 'fault',
        found: `${quoted(each)} is not understood`,
        expected: `expected ${example}`,
      };
    }
    const map: Record<string, unknown> = {};
    for (const [at, [key, cell]] of parts.entries()) {
      const part = found[at + 1];
      if (part === undefined) continue;
      if (cell === 'word') {
        map[key] = part.toLowerCase().replace(/\s+/g, '-');
        continue;
      }
      // the unit of the column is one of lengths
      const unit = key === 'price' ? null : context.unit;
      const reading = read(part, { path: key, cell, words: [] }, { ...context, unit });
      if (!reading.ok) return reading;
      if (reading.value !== 'unknown') map[key] = reading.value;
    }
    maps.push(map);
  }
  return { ok: true, value: maps };
}
