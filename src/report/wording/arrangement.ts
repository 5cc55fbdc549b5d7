import type { Class, ClearanceKind, MachineKind, Mounting } from '../../catalog/catalog.ts';
import type { CapitalItem, Plate } from '../../rules/decision.ts';

/** The pieces of an arrangement in words. */

export const MOUNTING_WORDS: Readonly<Record<Mounting | 'built-in', string>> = {
  'tilt-along-x': 'tilt axis along X',
  'tilt-along-y': 'tilt axis along Y',
  'axis-along-x': 'rotary axis along X',
  'axis-along-y': 'rotary axis along Y',
  'built-in': 'built-in table',
};

/** The same on a horizontal spindle, where Y is upright. */
export const LEVEL_TOOL_WORDS: typeof MOUNTING_WORDS = {
  ...MOUNTING_WORDS,
  'axis-along-y': 'rotary axis upright',
};

export interface ClassWords {
  readonly title: string;
  readonly means: string;
}

export const CLASS_WORDS: Readonly<Record<Class, ClassWords>> = {
  'collet-indexer': {
    title: 'collet indexer',
    means: 'a small rotary that holds bars in collets; one axis, it does not tilt',
  },
  'single-axis': {
    title: 'single-axis rotary',
    means: 'one level axis; reaches the sides around it, with a tailstock for long work',
  },
  'single-support': {
    title: 'tilting rotary, carried at one end',
    means: 'a faceplate that tilts, its tilt axis carried at one end only: open and light, less stiff',
  },
  trunnion: {
    title: 'trunnion',
    means: 'a faceplate that tilts in a cradle carried at both ends: stiff and heavy, takes table space',
  },
  'built-in': {
    title: 'five-axis machine with a table of its own',
    means: 'the rotary is built into the machine',
  },
};

export const MACHINE_KIND_WORDS: Readonly<Record<MachineKind, string>> = {
  mill: 'mill',
  convertible: 'mill that comes with a rotary',
  'five-axis': 'five-axis machine',
};

export const CLEARANCE_WORDS: Readonly<Record<ClearanceKind, string>> = {
  'lowered-table': 'lowered table',
  'column-spacer': 'column spacer',
};

export const PLATE_WORDS: Readonly<Record<Plate['why'], string>> = {
  adapter: 'adapter plate under the rotary',
  riser: 'riser under the rotary',
};

export const PRICE_WORDS: Readonly<Record<CapitalItem['item'], string>> = {
  machine: 'Machine',
  rotary: 'Rotary',
  clearance: 'Clearance addition',
  'axis-drives': 'Axis drives',
  plates: 'Plates',
  feature: 'Control or spindle feature',
  tailstock: 'Tailstock',
  power: 'Power supply',
  'still-open': 'What is still open may add',
  rigging: 'Transport and rigging in',
  training: 'Training and CAM software',
};
