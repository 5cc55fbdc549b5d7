import type { Answers } from '../answers.ts';

/** Whether vises should stay beside the rotary, or may. */
export const wantsVises = ({ work: { visesWanted } }: Answers): boolean => visesWanted !== 0;
