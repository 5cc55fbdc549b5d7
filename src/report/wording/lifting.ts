import type { LiftingDecision, LiftingMeans } from '../../rules/decision-lifting.ts';

export const MEANS_WORDS: Readonly<Record<LiftingMeans['by'], string>> = {
  hand: 'by hand',
  forklift: 'forklift',
  hoist: 'hoist',
};

/** What comes of it where no means is chosen. */
export const NO_MEANS_WORDS: Readonly<Record<Exclude<LiftingDecision['outcome'], 'chosen'>, string>> = {
  'stays-on':
    'Nothing in the shop is sure to lift it, and nothing has to: it stays on, what three-axis work there is lives beside it, and riggers put it on once.',
  none: 'Nothing in the shop lifts it, and beside it there is too little room for the vises that are wanted.',
  open: 'Whether something in the shop lifts it hangs on what is not known yet.',
};

/** What has to be kept in mind, by the means that are there. */
export const LIFTING_CAUTIONS: Readonly<Record<LiftingMeans['by'] | 'always', readonly string[]>> = {
  hand: [
    'The limit for lifting by hand holds for people who stand upright with room to move and a dry floor. It does not hold for reaching into the enclosure of a machine, nor while carrying: inside, less is safe.',
    'Several people share a load less well than each lifts alone; the share that is taken is from memory.',
  ],
  forklift: [
    'What a forklift lifts at another load center is an estimate: its data plate decides, with a trained driver.',
    'Forks that reach over a door sill may not come to the middle of the table. Look before it is ordered.',
  ],
  hoist: [
    'The rating of the hoist includes hook, slings and rigging. Slings are tagged and inspected, and never flatter than the angle that they are rated for.',
    'Only two legs are counted as carrying. Eye bolts lose most of their rating at an angle: the data of their maker decide, and a bolt without a shoulder is pulled straight only.',
    'The roof of the enclosure has to open where the hook comes down. Ask the seller.',
  ],
  always: [
    'A rotary is lifted with its axes locked and its plugs off, and nobody stands under it. Riggers, local code and licensed practice decide.',
  ],
};
