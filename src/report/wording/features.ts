import type { FeatureNeed, Need } from '../../rules/decision.ts';
import type { FeatureId, FeatureReason } from '../../rules/features/ids.ts';

/** Features, called by what they do. */
export const FEATURE_WORDS: Readonly<Record<FeatureId, string>> = {
  axisDrives: 'axis drives',
  toolCenterPoint: 'tool center point control',
  rotatingWorkOffset: 'rotating work offset',
  tiltedWorkPlane: 'tilted work plane',
  spindleProbe: 'spindle probe',
  toolSetter: 'tool setter',
  lookAhead: 'look-ahead contouring',
  camPost: 'CAM post-processor with machine simulation',
  longHolders: 'long holders',
  throughSpindleCoolant: 'coolant through the spindle',
  chipConveying: 'chip conveyor',
  mistAndFire: 'mist extraction and fire protection',
};

/** The words for a feature's name; undefined where it has none and stands for itself. */
export const featureWords = (feature: string): string | undefined =>
  Object.hasOwn(FEATURE_WORDS, feature) ? FEATURE_WORDS[feature as keyof typeof FEATURE_WORDS] : undefined;

export const FEATURE_NEED_WORDS: Readonly<Record<Need, string>> = {
  required: 'required',
  'pays for itself': 'pays for itself',
  'worth having': 'worth having',
  'not needed': 'not needed',
};

export const THERE_WORDS: Readonly<Record<FeatureNeed['there'], string>> = {
  standard: 'comes with it',
  offered: 'to be ordered',
  'not offered': 'not offered',
  ask: 'ask the seller',
};

/** Why, in words. `{number}`, `{limit}` and `{parts}` stand for what was worked out. */
export const FEATURE_REASON_WORDS: Readonly<Record<FeatureReason, string>> = {
  'axes-to-drive': 'rotary axes to be driven: {number}, drives that are fitted: {limit}',
  'axes-driven': 'all its rotary axes are driven already: {number}',
  'all-axes-move': 'all axes move in the cut for {number} a year: {parts}',
  'axes-stand-braked': 'the rotary axes stand braked while they cut',
  'loaded-off-center': 'loaded by hand up to {number} off the axis: {parts}',
  'saves-at-setups': 'no part asks for it; it saves time at every setup',
  'goes-with-work-offset':
    'no part asks for it; together with a rotating work offset it lets parts sit where they come to sit',
  'one-axis-only': 'there is no tilt',
  'error-by-hand': 'centers found by hand leave an error of {number}, and {limit} are allowed: {parts}',
  'saves-at-tools': 'setups a year: {number}, tools at each: {limit}',
  'blocks-too-slow': 'the path asks for {number} blocks a second, and the control works off {limit}: {parts}',
  'blocks-ahead-too-few':
    'the path stops within {number} blocks, and the control reads {limit} ahead: {parts}',
  'control-keeps-up': 'the path asks for {number} blocks, and the control as it comes works off {limit}',
  'no-contours': 'no surfaces, and no axes that move in the cut',
  'tilt-nobody-sees':
    'the work is tilted by up to {number}, and nobody sees a collision coming from the program alone',
  'one-axis-program': 'one axis can be programmed by hand',
  'tool-too-short': 'a tool of {number} is needed, and the longest there is has {limit}: {parts}',
  'long-tool-in-use': 'a tool of {number} is needed there, and the longest there is has {limit}: {parts}',
  'tools-reach': 'the tools that are there reach everywhere',
  'hole-deep': 'holes up to {number} diameters deep, where {limit} are the line: {parts}',
  'tough-material': 'tough material that wants cooling at the edge: {parts}',
  'holes-shallow': 'no hole is deeper than {limit} diameters',
  'chips-many': 'metal cut to chips: {number}, where {limit} is the line',
  'chips-few': 'metal cut to chips: {number}, where {limit} is the line',
  'chips-burn':
    'fine chips that burn are made for {number} a year: {parts}. Local code decides what is asked for',
  'chips-do-not-burn': 'no material whose fine chips are known to burn',
};
