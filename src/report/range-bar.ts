import type { Stability } from '../rules/decision.ts';

const WIDTH = 21;
const MARK = 'o';
const LINE = '-';
const NO_END = '.';

export const BAR_HEADING = 'Where it stands';
const AT_END = new RegExp(`(?:\\s+${BAR_HEADING}:?)?(?:\\s+[(.o][-.o]{${WIDTH - 2}}[).o])?$`);

/** A line as it is read aloud: without a bar at its end, or the heading over one. The ends stand in words beside it. */
export const withoutBar = (line: string): string => line.replace(AT_END, '');

/**
 * The range in which an answer may lie, drawn from its least to its greatest value, with a mark where the answer is
 * now. A side without an end is dotted, and the mark then stands in the middle. Example: 180 in 150 to 214 →
 * (--------o----------).
 */
export function rangeBar({ at, low, high }: Pick<Stability, 'at' | 'low' | 'high'>): string {
  const last = WIDTH - 1;
  const mark = low === null || high === null || low === high ? last / 2 : placeOf(at, low, high, last);
  const cell = (index: number): string => {
    if (index === mark) return MARK;
    const endless = index < mark ? low === null : high === null;
    if (endless) return NO_END;
    return index === 0 ? '(' : index === last ? ')' : LINE;
  };
  return Array.from({ length: WIDTH }, (_, index) => cell(index)).join('');
}

/** On an end only where the answer is that end. */
function placeOf(at: number, low: number, high: number, last: number): number {
  if (at <= low) return 0;
  if (at >= high) return last;
  return Math.min(last - 1, Math.max(1, Math.round((last * (at - low)) / (high - low))));
}
