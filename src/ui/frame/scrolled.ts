import { fitRow } from '../look/cells.ts';
import { type Row, row } from '../look/row.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import { keyLine, titleRow } from './foot.ts';

/** A long text of the interview in its frame. */
export const scrolledFrame = (
  { scroll }: Ui,
  title: string,
  rows: readonly Row[],
  { width, height, here }: Context,
): readonly Row[] => scrolledText(title, rows, scroll, keyLine(here, width), { width, height });

/** A long text in a frame: as much as there is room for, and how much is above and below. */
export function scrolledText(
  title: string,
  rows: readonly Row[],
  scroll: number,
  foot: Row,
  { width, height }: { readonly width: number; readonly height: number },
): readonly Row[] {
  const room = Math.max(1, height - 3);
  const from = Math.max(0, Math.min(scroll, rows.length - room));
  const shown = rows.slice(from, from + room);
  const after = rows.length - from - shown.length;
  const where = [...(from > 0 ? [`▲ ${from} above`] : []), ...(after > 0 ? [`▼ ${after} below`] : [])].join(
    '  ',
  );
  const fill = Array.from({ length: room - shown.length }, () => row(''));
  return [titleRow(title, where, width), row('─'.repeat(width), 'quiet'), ...shown, ...fill, foot]
    .slice(-height)
    .map((each) => fitRow(each, width));
}
