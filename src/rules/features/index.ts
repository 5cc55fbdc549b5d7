import { axisDrives } from './axis-drives.ts';
import { camPost } from './cam-post.ts';
import { chipConveying, mistAndFire, throughSpindleCoolant } from './chips.ts';
import { longHolders } from './long-holders.ts';
import { lookAhead } from './look-ahead.ts';
import type { FeatureRule } from './rule.ts';
import { spindleProbe } from './spindle-probe.ts';
import { toolCenterPoint } from './tool-center-point.ts';
import { toolSetter } from './tool-setter.ts';
import { rotatingWorkOffset, tiltedWorkPlane } from './work-offset.ts';

/** Every feature, in the order of the ids. */
export const FEATURE_RULES: readonly FeatureRule[] = [
  axisDrives,
  toolCenterPoint,
  rotatingWorkOffset,
  tiltedWorkPlane,
  spindleProbe,
  toolSetter,
  lookAhead,
  camPost,
  longHolders,
  throughSpindleCoolant,
  chipConveying,
  mistAndFire,
];
