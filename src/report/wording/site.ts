/** What has to be measured in the building, in the order of the sheet. */
export const SITE_ROWS = [
  'bay',
  'ceiling',
  'doorway',
  'door-sill',
  'floor',
  'power',
  'air',
  'lifting',
  'hook',
] as const;
export type SiteRow = (typeof SITE_ROWS)[number];

export interface SiteWords {
  readonly title: string;
  readonly measure: string;
  readonly who: string;
  /** checks that hold it against what is needed */
  readonly checks: readonly string[];
}

export const SITE_WORDS: Readonly<Record<SiteRow, SiteWords>> = {
  bay: {
    title: 'Place for the machine',
    measure:
      'Both ways between what cannot move: walls, columns, other machines. Aisles and ways out stay free.',
    who: 'you, with a tape; then the rigger',
    checks: ['bay'],
  },
  ceiling: {
    title: 'Ceiling',
    measure: 'The lowest thing over that place: beam, lamp, duct, crane rail.',
    who: 'you, with a tape; then the rigger',
    checks: ['ceiling'],
  },
  doorway: {
    title: 'Doorway',
    measure:
      'The narrowest and the lowest opening on the whole way in from the truck; steps, slopes and turns too.',
    who: 'the rigger',
    checks: ['doorway'],
  },
  'door-sill': {
    title: 'Sill of the machine’s door',
    measure:
      'Height above the floor of the edge over which the rotary is lifted; of a machine to be bought, from its drawing.',
    who: 'the seller of the machine',
    checks: [],
  },
  floor: {
    title: 'Floor',
    measure: 'What it is made of, how thick, what is below it, and what it may carry, in writing.',
    who: 'a structural engineer',
    checks: ['floor-load'],
  },
  power: {
    title: 'Electric power',
    measure: 'Voltage, phases and the load that is free at the panel; room to work in front of it.',
    who: 'a licensed electrician',
    checks: ['power'],
  },
  air: {
    title: 'Compressed air',
    measure: 'Flow and pressure where the machine will stand, while everything else is running.',
    who: 'whoever looks after the compressor',
    checks: ['air'],
  },
  lifting: {
    title: 'Lifting the rotary',
    measure: 'The rating plates of hoist, slings and forklift, and how far the load hangs from mast or body.',
    who: 'the rigger',
    checks: ['lift'],
  },
  hook: {
    title: 'Height of the hook',
    measure: 'From the floor to the hook at its highest, over the machine’s door.',
    who: 'the rigger',
    checks: ['hook-height'],
  },
};
