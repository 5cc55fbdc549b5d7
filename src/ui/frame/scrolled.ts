import { fitRow } from '../look/cells.ts';
import { type Row, row } from '../look/row.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import { keyLine, titleRow } from './foot.ts';

/** A long text in its frame: as much as there is room for, and how much is above and below. */
export function scrolledFrame(ui: Ui, title: string, rows: readonly Row[], context: Context): readonly Row[] {
  const { width, height, here } = context;
  const room = Math.max(1, height - 3);
  const from = Math.max(0, Math.min(ui.scroll, rows.length - room));
  const shown = rows.slice(from, from + room);
  const after = rows.length - from - shown.length;
  const where = [...(from > 0 ? [`▲ ${from} above`] : []), ...(after > 0 ? [`▼ ${after} below`] : [])].join(
    '  ',
  );
  const fill = Array.from({ length: room - shown.length }, () => row(''));
  return [
    titleRow(title, where, width),
    row('─'.repeat(width), 'quiet'),
    ...shown,
    ...fill,
    keyLine(here, width),
  ]
    .slice(-height)
    .map((each) => fitRow(each, width));
}
