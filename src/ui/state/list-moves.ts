/** So many rows are a page. */
export const PAGE = 10;

/** No text has so many rows; the frame holds the scroll inside its text. */
const MOST_SCROLLED = 10_000;

interface Shown {
  /** the row that is highlighted */
  readonly mark: number;
  /** rows of a text that are scrolled past */
  readonly scroll: number;
}

/** Moves the highlight in a list of `rows`, one row further at an end goes round; without a list, scrolls. */
export function movedBy({ mark, scroll }: Shown, by: number, rows: number): Partial<Shown> {
  if (rows === 0) return { scroll: Math.max(0, Math.min(scroll + by, MOST_SCROLLED)) };
  const last = rows - 1;
  if (by === 1 && mark >= last) return { mark: 0 };
  if (by === -1 && mark <= 0) return { mark: last };
  return { mark: Math.max(0, Math.min(last, mark + by)) };
}

/** The rows that hold every word that is typed, in any order; capitals aside. */
export function matching<Row extends { readonly label: string; readonly state: string }>(
  rows: readonly Row[],
  typed: string,
): readonly Row[] {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  if (words.length === 0) return rows;
  return rows.filter(({ label, state }) => {
    const text = `${label} ${state}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
}
