/** A spot in a text; lines and columns count from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** The way to a value in a document: keys of maps, positions in lists. */
export type Path = readonly (string | number)[];
