import { comparedRows } from '../../report/arrangement-rows.ts';
import type { Decision } from '../../rules/decision.ts';
import { padded, wrapped } from '../look/cells.ts';
import { type Row, row } from '../look/row.ts';

const TITLE_WIDTH = 14;
const GAP = 2;

/** Arrangements in columns; what is wider than its column is broken into lines. */
export function comparisonRows(
  decision: Decision,
  ids: readonly string[],
  width: number,
  ascii: boolean,
): readonly Row[] {
  if (ids.length === 0) return [row('There is nothing to compare.')];
  const column = Math.max(8, Math.floor((width - TITLE_WIDTH) / ids.length) - GAP);
  return comparedRows(decision, ids, ascii).flatMap(({ title, cells }) => {
    const lines = cells.map((cell) => wrapped(cell, column));
    const rows = Math.max(1, ...lines.map((each) => each.length));
    const own = Array.from(
      { length: rows },
      (_, index): Row => ({
        spans: [
          { text: padded(index === 0 ? title : '', TITLE_WIDTH), tone: 'quiet' },
          ...lines.map((each) => ({
            text: `${padded(each[index] ?? '', column)}${' '.repeat(GAP)}`,
            tone: title === '' ? ('strong' as const) : ('plain' as const),
          })),
        ],
      }),
    );
    return rows > 1 ? [...own, row('')] : own;
  });
}
