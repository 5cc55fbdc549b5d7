import type { Check } from '../judging/check.ts';
import { lookAhead } from './features/look-ahead.ts';
import { rotatingWorkOffset } from './features/rotating-work-offset.ts';
import { tiltedWorkPlane } from './features/tilted-work-plane.ts';
import { toolCenterPoint } from './features/tool-center-point.ts';
import { axisDrives } from './machine/axis-drives.ts';
import { column } from './machine/column.ts';
import { housingClear } from './machine/housing-clear.ts';
import { indexClear } from './machine/index-clear.ts';
import { reachHigh } from './machine/reach-high.ts';
import { reachLow } from './machine/reach-low.ts';
import { slotMatch } from './machine/slot-match.ts';
import { spindlePower } from './machine/spindle-power.ts';
import { spindleSpeed } from './machine/spindle-speed.ts';
import { spindleTorque } from './machine/spindle-torque.ts';
import { tableClear } from './machine/table-clear.ts';
import { tableFootprint } from './machine/table-footprint.ts';
import { tableLoad } from './machine/table-load.ts';
import { tailstock } from './machine/tailstock.ts';
import { toolLength } from './machine/tool-length.ts';
import { travelX } from './machine/travel-x.ts';
import { travelY } from './machine/travel-y.ts';
import { air } from './shop/air.ts';
import { bay } from './shop/bay.ts';
import { budget } from './shop/budget.ts';
import { ceiling } from './shop/ceiling.ts';
import { doorway } from './shop/doorway.ts';
import { floorLoad } from './shop/floor-load.ts';
import { hookHeight } from './shop/hook-height.ts';
import { lift } from './shop/lift.ts';
import { power } from './shop/power.ts';
import { brakeRotary } from './work/brake-rotary.ts';
import { brakeTilt } from './work/brake-tilt.ts';
import { collet } from './work/collet.ts';
import { driveRotary } from './work/drive-rotary.ts';
import { driveTilt } from './work/drive-tilt.ts';
import { faceplate } from './work/faceplate.ts';
import { indexAccuracy } from './work/index-accuracy.ts';
import { inertia } from './work/inertia.ts';
import { payload } from './work/payload.ts';
import { rotarySpeed } from './work/rotary-speed.ts';
import { swing } from './work/swing.ts';
import { tiltMoment } from './work/tilt-moment.ts';
import { tiltRange } from './work/tilt-range.ts';
import { tiltSwing } from './work/tilt-swing.ts';

/** Every check, in the order of the tables. The engine knows none by name. */
export const CHECKS: readonly Check[] = [
  swing,
  faceplate,
  collet,
  tiltRange,
  tiltSwing,
  payload,
  tiltMoment,
  brakeRotary,
  brakeTilt,
  driveRotary,
  driveTilt,
  inertia,
  indexAccuracy,
  rotarySpeed,
  tableFootprint,
  slotMatch,
  tableLoad,
  travelX,
  travelY,
  reachHigh,
  reachLow,
  indexClear,
  tableClear,
  housingClear,
  column,
  toolLength,
  spindlePower,
  spindleTorque,
  spindleSpeed,
  axisDrives,
  tailstock,
  toolCenterPoint,
  rotatingWorkOffset,
  tiltedWorkPlane,
  lookAhead,
  bay,
  ceiling,
  doorway,
  floorLoad,
  power,
  air,
  lift,
  hookHeight,
  budget,
];
