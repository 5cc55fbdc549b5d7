import type { MaterialId } from '../../mechanics/forces/materials.ts';
import type {
  Cam,
  CutSize,
  HoldingKind,
  Loading,
  Motion,
  Shape,
  Stands,
  Swap,
} from '../../questions/answers.ts';

/** The kinds that an answer can be, in words. */

export const MATERIAL_WORDS: Readonly<Record<MaterialId, string>> = {
  'steel-carbon': 'carbon steel',
  'steel-alloy': 'alloy steel',
  'steel-hardened': 'hardened steel',
  'stainless-austenitic': 'austenitic stainless steel',
  'iron-gray': 'gray iron',
  'iron-ductile': 'ductile iron',
  'aluminum-wrought': 'wrought aluminum',
  'aluminum-cast': 'cast aluminum',
  titanium: 'titanium',
  'nickel-alloy': 'nickel alloy',
  brass: 'brass',
  plastic: 'plastic',
};

export const SHAPE_WORDS: Readonly<Record<Shape, string>> = { block: 'block', round: 'round' };

export const STANDS_WORDS: Readonly<Record<Stands, string>> = { upright: 'upright', lying: 'lying' };

export const MOTION_WORDS: Readonly<Record<Motion, string>> = {
  positional: 'the axes are braked while it cuts (positional)',
  simultaneous: 'the axes move while it cuts (simultaneous)',
  surfaces: 'fine surfaces at a fixed tilt',
};

export const HOLDING_WORDS: Readonly<Record<HoldingKind, string>> = {
  fixture: 'fixture',
  vise: 'vise',
  chuck: 'chuck',
  collet: 'collet',
};

export const CUT_WORDS: Readonly<Record<CutSize, string>> = {
  light: 'light',
  medium: 'medium',
  heavy: 'heavy',
};

export const LOADING_WORDS: Readonly<Record<Loading, string>> = {
  'by-hand': 'by hand',
  pallet: 'on pallets',
  robot: 'by a robot',
};

export const SWAP_WORDS: Readonly<Record<Swap, string>> = {
  'zero-point': 'on a zero-point base',
  keyed: 'keyed to the slots',
  trammed: 'trammed in',
};

export const CAM_WORDS: Readonly<Record<Cam, string>> = {
  none: 'none',
  threeAxis: 'three-axis',
  fiveAxis: 'five-axis',
};

/** The words of a choice, or 'not sure'. */
export const choiceWords = <Kind extends string>(
  words: Readonly<Record<Kind, string>>,
  choice: Kind | 'unknown',
): string => (choice === 'unknown' ? 'not sure' : words[choice]);
