import { type Inline, say } from './blocks/inline.ts';

/** The first few of many, and that there are others. Example: of four names and most 3, three names and 'others'. */
export const firstNames = (
  names: readonly (readonly Inline[])[],
  most: number,
): readonly (readonly Inline[])[] => (names.length > most ? [...names.slice(0, most), say`others`] : names);
