import { rotaryInput as input } from './input.ts';

/** The numbers of a rotary or a built-in table. */
export const rotary = {
  faceplate: input('faceplate diameter', 'mm', [50, 1200], (of) => of.faceplate),
  collet: input('collet capacity', 'mm', [5, 80], (of) => of.collet),
  swing: input('swing', 'mm', [50, 1500], (of) => of.swing),
  centerHeight: input('center height', 'mm', [60, 600], (of) => of.centerHeight),
  faceOffset: input('faceplate above the tilt axis', 'mm', [-250, 250], (of) => of.faceOffset),
  tiltGreatest: input('greatest tilt', '°', [0, 135], (of) => of.tiltGreatest),
  tiltClearRadius: input('radius free for tilting', 'mm', [50, 1000], (of) => of.tiltClearRadius),
  payloadLevel: input('payload, level', 'kg', [1, 2000], (of) => of.payloadLevel),
  payloadTilted: input('payload, tilted', 'kg', [1, 2000], (of) => of.payloadTilted),
  tiltMoment: input('moment the tilt axis carries', 'N·m', [1, 5000], (of) => of.tiltMoment),
  brakeRotary: input('brake torque, rotary axis', 'N·m', [10, 8000], (of) => of.brakeRotary),
  brakeTilt: input('brake torque, tilt axis', 'N·m', [10, 8000], (of) => of.brakeTilt),
  driveRotary: input('drive torque, rotary axis', 'N·m', [5, 4000], (of) => of.driveRotary),
  driveTilt: input('drive torque, tilt axis', 'N·m', [5, 4000], (of) => of.driveTilt),
  inertia: input('inertia it turns', 'kg·m²', [0.001, 200], (of) => of.inertia),
  speedRotary: input('speed, rotary axis', 'rev/min', [1, 300], (of) => of.speedRotary),
  accuracyRotary: input('accuracy, rotary axis', 'arcsec', [1, 90], (of) => of.accuracyRotary),
  accuracyTilt: input('accuracy, tilt axis', 'arcsec', [1, 90], (of) => of.accuracyTilt),
  baseAlong: input('base along its axis', 'mm', [80, 2000], (of) => of.baseAlong),
  baseAcross: input('base across its axis', 'mm', [80, 1500], (of) => of.baseAcross),
  baseCenterAlong: input('center along the base', 'mm', [20, 1500], (of) => of.baseCenterAlong),
  baseCenterAcross: input('center across the base', 'mm', [20, 1000], (of) => of.baseCenterAcross),
  tailstockLength: input('length of the tailstock', 'mm', [0, 600], (of) => of.tailstockLength),
  mass: input('mass of the rotary', 'kg', [5, 3000], (of) => of.mass),
} as const;
