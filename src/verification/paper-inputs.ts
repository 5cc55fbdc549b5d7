import type { Nodes } from 'mdast';
import { INPUTS_FENCE } from '../report/index.ts';

/** The inputs that a paper carries, as JSON text, and the line where they begin. */
export interface PaperInputs {
  readonly text: string;
  readonly line: number;
}

/** The fenced inputs of a paper in Markdown; null where it carries none. Should there be several, the last. */
export function paperInputs(paper: readonly Nodes[]): PaperInputs | null {
  const fenced = paper.flatMap((node) =>
    node.type === 'code' && node.lang === 'json' && node.meta === INPUTS_FENCE ? [node] : [],
  );
  const last = fenced.at(-1);
  return last === undefined ? null : { text: last.value, line: (last.position?.start.line ?? 0) + 1 };
}
