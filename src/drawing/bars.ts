/** A bar chart as data: one row a number, all from the same zero line. */
export interface Bars {
  readonly rows: readonly Bar[];
  /** numbers on the axis, as they are written; the zero line is at 0 */
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

/** What a bar says beside its length; told apart by hatching, by sign and by word, never by color. */
export type BarForm = 'met' | 'conditional' | 'undecided' | 'missed';

/** A number as a bar from zero, or a range from its one end to the other. */
export interface Bar {
  readonly name: string;
  /** the number as it is written */
  readonly text: string;
  /** what its form says. Example: 'holds' */
  readonly word: string;
  readonly form: BarForm;
  /** where the number or the range stands in the decision */
  readonly path: readonly (string | number)[];
  /** 0 where it is a number, the lesser end where it is a range; null: goes on to the left without an end */
  readonly from: number | null;
  /** the number, or the greater end; null: goes on to the right without an end */
  readonly to: number | null;
}

/** From where to where the axis runs: over all ticks and all ends. Example: ticks 0 and 1, a bar to −0.2 → [−0.2, 1]. */
export function barSpan({ rows, ticks }: Bars): readonly [low: number, high: number] {
  const ends = [
    0,
    ...ticks.map(({ at }) => at),
    ...rows.flatMap(({ from, to }) => [from, to]).filter((each) => each !== null),
  ];
  return [Math.min(...ends), Math.max(...ends)];
}

/** Where a bar is drawn, the lesser end first; what has no end goes as far as the axis. */
export function barEnds({ from, to }: Bar, span: readonly [number, number]): readonly [number, number] {
  const [a, b] = [from ?? span[0], to ?? span[1]];
  return a < b ? [a, b] : [b, a];
}
