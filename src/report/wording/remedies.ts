import type { Remedy } from '../../rules/decision.ts';

/** What can be changed so that a failing check holds, as it stands behind “what helps”. */
export const REMEDY_WORDS: Readonly<Record<Remedy, string>> = {
  'larger-rotary': 'a larger rotary',
  'smaller-part': 'a smaller part',
  'lighter-fixture': 'a lighter fixture',
  'lighter-cut': 'a lighter cut',
  'shorter-tools': 'shorter tools',
  'longer-tools': 'longer tools',
  'lowered-table': 'a lowered table',
  'column-spacer': 'a column spacer',
  riser: 'a riser under the rotary',
  'adapter-plate': 'an adapter plate',
  'other-mounting': 'mounting it the other way',
  'larger-machine': 'a larger machine',
  'spindle-probe': 'a spindle probe',
  'lower-fixture': 'a lower fixture',
  'raise-fixture': 'a higher fixture',
  'centered-part': 'the part on the axis',
  'other-class': 'another class of rotary',
  'slower-feed': 'a slower feed',
  'ask-the-seller': 'a number from the seller',
  'stronger-spindle': 'a stronger or faster spindle',
  tailstock: 'a tailstock',
  'other-control': 'another control',
  'more-budget': 'a larger budget',
};
