/** How a result is written. */
export type Format = 'text' | 'json' | 'markdown';

/**
 * What was asked for; otherwise what the name of the file asks for, and plain text where that says nothing.
 * Example: formatOf(undefined, 'for the bank.md') → 'markdown'; formatOf('text', 'notes.md') → 'text'.
 */
export function formatOf(asked: Format | undefined, out: string | undefined): Format {
  if (asked !== undefined || out === undefined) return asked ?? 'text';
  if (/\.(md|markdown)$/i.test(out)) return 'markdown';
  return /\.json$/i.test(out) ? 'json' : 'text';
}
