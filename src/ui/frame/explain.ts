import type { LengthUnits } from '../../quantities/kinds.ts';
import { unitsOf } from '../../session/world.ts';
import type { Explained } from '../../teaching/explained.ts';
import { explanationLines } from '../../teaching/exports.ts';
import { topicNamed } from '../../teaching/find-topic.ts';
import type { Row } from '../look/row.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import { shownItems } from './listing.ts';
import { listFrame } from './lists.ts';
import { typedRow } from './question.ts';
import { scrolledFrame } from './scrolled.ts';
import { tonedRow } from './toned.ts';

/** Everything that can be explained, what the screen is about first. */
export function explainFrame(ui: Ui, context: Context): readonly Row[] {
  return listFrame(
    ui,
    {
      title: 'What does it mean?',
      right: `${(shownItems(ui, context) ?? []).length} explained`,
      lead: 'What this screen is about comes first. Type words of a name; Enter explains it, with an example worked out.',
      below: [],
      typed: typedRow('Explain ', ui, context),
    },
    context,
  );
}

/** The explanation that was chosen. */
export function explainedFrame(ui: Ui, name: string, context: Context): readonly Row[] {
  const rows = explainedRows(name, { ...context, units: unitsOf(ui.session.kept) });
  return scrolledFrame(ui, 'What it means', rows, context);
}

/** Made once for each name, and laid out once for a window: whoever scrolls asks for the same at every key. */
const made = new Map<string, Explained>();
const laidOut = new Map<string, readonly Row[]>();

/** An explanation by its name, laid out; nothing where there is none. */
export function explainedRows(
  name: string,
  { width, ascii, units }: { readonly width: number; readonly ascii: boolean; readonly units: LengthUnits },
): readonly Row[] {
  const topic = topicNamed(name);
  if (topic === undefined) return [];
  const key = `${name} ${width} ${ascii} ${units}`;
  const known = laidOut.get(key);
  if (known !== undefined) return known;
  const explained = made.get(name) ?? topic.explain();
  made.set(name, explained);
  const rows = explanationLines(explained, { width, ascii, drawn: true }, units).map(tonedRow);
  laidOut.clear();
  laidOut.set(key, rows);
  return rows;
}
