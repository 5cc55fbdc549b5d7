import type { Candidate } from '../../rules/arranging/candidates.ts';
import type { Base } from './recipe.ts';

/** The calm shop as it is drawn. */
export const CALM: readonly Base[] = [{}];

/** The same with its part changed. */
export const part = (change: NonNullable<Base['part']>): Base => ({ part: change });

/** A part for which all axes move in the cut. */
export const MOVING = {
  motion: 'simultaneous',
  contourCut: { diameter: 12, teeth: 3, ap: 2, ae: 2, fz: 0.05 },
} as const;

/** A fixture so tall that little room is left, */
export const STACKED: readonly Base[] = [0.6, 0.7, 0.75].map((tall) => ({ tall, load: 0.45 }));
/** and one still taller, under a small part. */
export const STACKED_HIGH: readonly Base[] = [0.72, 0.76, 0.8, 0.84].map((tall) => ({
  tall,
  load: 0.45,
  part: { shape: 'block', size: [40, 30, 20], stands: 'unknown', holding: { diameter: 60 } },
}));

export const oneAxis = ({ rotary }: Candidate): boolean => rotary.axes === 1;
export const twoAxes = ({ rotary }: Candidate): boolean => rotary.axes === 2;
/** A rotary that is put on the table, not one that is built in. */
export const added = ({ machine }: Candidate): boolean => !machine.builtIn;
