import type { ValueWords } from './answers.ts';

const value = (words: string, unit = ''): ValueWords => ({ words, unit });

/** Numbers that the rules work out on the way, by their names in a check's inputs. */
export const DERIVED_VALUE_WORDS: Readonly<Record<string, ValueWords>> = {
  'parts.planRadius': value('radius around the part', 'mm'),
  'parts.tilt': value('greatest tilt that is used', '°'),
  'parts.brakeSafety': value('safety against the brake'),
  'parts.cut.force': value('greatest force of the cut', 'N'),
  'parts.cut.power': value('power of the cut', 'kW'),
  'parts.cut.torque': value('torque of the cut', 'N·m'),
  'parts.cut.speed': value('spindle speed of the cut', 'rev/min'),
  'parts.contourCut.force': value('greatest force of the cut while moving', 'N'),
  'parts.contourCut.power': value('power of the cut while moving', 'kW'),
  'parts.contourCut.torque': value('torque of the cut while moving', 'N·m'),
  'parts.contourCut.speed': value('spindle speed of the cut while moving', 'rev/min'),
  'parts.drill.thrust': value('thrust of the drill', 'N'),
  price: value('price of all of it', 'money'),
  capital: value('price of all of it, with rigging and training', 'money'),
  'clearance.raised': value('raised by clearance additions', 'mm'),
  'clearance.height': value('heightened by a column spacer', 'mm'),
  swaps: value('lifts of the rotary a year, on or off'),
  'plates.thickness': value('plates under the rotary', 'mm'),
  'plates.mass': value('mass of the plates', 'kg'),
  'place.x': value('place along X', 'mm'),
  'place.y': value('place along Y', 'mm'),
};
