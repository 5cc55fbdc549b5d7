import type { StageId } from '../../rules/stages/index.ts';

export interface StageWords {
  readonly title: string;
  /** what the stage asks */
  readonly asks: string;
}

export const STAGE_WORDS: Readonly<Record<StageId, StageWords>> = {
  envelope: {
    title: 'Work envelope',
    asks: 'Is the rotary large and strong enough for the size and the weight of the work?',
  },
  'rotary-class': {
    title: 'Kind of rotary',
    asks: 'Does it tilt far enough, hold against the cut, and place the faces true to each other?',
  },
  fit: {
    title: 'Fit on the machine',
    asks: 'Does it stand on the table, and can the spindle reach and cut everything?',
  },
  clearance: {
    title: 'Clearance above the work',
    asks: 'Can the spindle rise over the work, with the additions that the machine offers?',
  },
  features: {
    title: 'Drives and control',
    asks: 'Does the machine offer the drives and the control features that the work requires?',
  },
  shop: {
    title: 'The shop',
    asks: 'Can it be brought in, stood, supplied, lifted and paid for in this shop?',
  },
};
