const RIGHT_ANGLE = 90;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** The corners of a circle are exact, so that what stands upright reaches out by nothing at all. */
const isQuarter = (angle: number): boolean => angle % RIGHT_ANGLE === 0;
const exact = (angle: number, value: number): number => (isQuarter(angle) ? Math.round(value) : value);

type NumberFunction = (...values: number[]) => number;

const one =
  (of: (value: number) => number): NumberFunction =>
  (value = Number.NaN) =>
    of(value);

/** What a formula may use by name. Angles are in degrees, as on a drawing. */
export const FUNCTIONS: Readonly<Record<string, NumberFunction>> = {
  max: (...all) => Math.max(...all),
  min: (...all) => Math.min(...all),
  sqrt: one(Math.sqrt),
  abs: one(Math.abs),
  round: one(Math.round),
  floor: one(Math.floor),
  ceil: one(Math.ceil),
  sin: one((angle) => exact(angle, Math.sin(radians(angle)))),
  cos: one((angle) => exact(angle, Math.cos(radians(angle)))),
  tan: one((angle) => Math.tan(radians(angle))),
  acos: one((value) => degrees(Math.acos(value))),
  atan2: (up = Number.NaN, out = Number.NaN) => degrees(Math.atan2(up, out)),
  /** the second where the first is so (not 0), else the third */
  if: (so = 0, then = Number.NaN, otherwise = Number.NaN) => (so !== 0 ? then : otherwise),
};

/** What each does, for whoever has it on a calculator or not. The others are written with signs. */
export const FUNCTION_WORDS: Readonly<Record<string, string>> = {
  max: 'the largest of them',
  min: 'the smallest of them',
  abs: 'the number without its sign',
  round: 'the nearest whole number',
  floor: 'the next whole number below',
  ceil: 'the next whole number above',
  acos: 'the angle that has this cosine (the inverse of cos on a calculator)',
  atan2:
    'the angle whose tangent is the first over the second (the inverse of tan on a calculator); where the second is nothing, a right angle with the sign of the first; where the second is below nothing, half a turn more, or less if the first is below nothing too',
  if: 'the second where the first is so, else the third',
};

const ANGLES: ReadonlySet<string> = new Set(['sin', 'cos', 'tan', 'acos', 'atan2']);

/** Whether a function takes or gives an angle. Example: isAboutAngles('sin') → true. */
export const isAboutAngles = (name: string): boolean => ANGLES.has(name);

/** Numbers with a name of their own. */
export const CONSTANTS: Readonly<Record<string, number>> = { pi: Math.PI };
