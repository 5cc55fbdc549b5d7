import type { Answers } from '../answers.ts';

/** Whether the mill is owned already and stays where it is, so that nothing has to come in for it. */
export const millStays = ({ shop: { machine } }: Answers): boolean =>
  machine !== 'none' && machine !== 'unknown';
