/** A value in words, with the unit that its number has. */
export interface ValueWords {
  readonly words: string;
  readonly unit: string;
}

const value = (words: string, unit = ''): ValueWords => ({ words, unit });

/**
 * Answers that stand in the answers file but are not asked in the interview, by their path without the part's
 * name. What is asked has its words in its question.
 */
export const UNASKED_ANSWER_WORDS: Readonly<Record<string, ValueWords>> = {
  'parts.fill': value('share of the block that is material', 'share'),
  'parts.approaches': value('sides that are cut'),
  'parts.slant': value('slant angle', '°'),
  'parts.undercut': value('undercut angle', '°'),
  'parts.contourCut.diameter': value('cutter diameter of the moving axes', 'mm'),
  'parts.contourCut.teeth': value('teeth of the cutter of the moving axes'),
  'parts.contourCut.ap': value('depth of cut of the moving axes', 'mm'),
  'parts.contourCut.ae': value('width of cut of the moving axes', 'mm'),
  'parts.contourCut.fz': value('feed per tooth of the moving axes', 'mm/tooth'),
  'parts.contourCut.vc': value('cutting speed of the moving axes', 'm/min'),
  'parts.contourCut.interrupted': value('interrupted cut of the moving axes'),
  'shop.bay': value('size of the bay', 'mm'),
  'shop.bay[0]': value('length of the bay', 'mm'),
  'shop.bay[1]': value('width of the bay', 'mm'),
  'shop.ceiling': value('height of the ceiling', 'mm'),
  'shop.doorway.width': value('width of the doorway', 'mm'),
  'shop.doorway.height': value('height of the doorway', 'mm'),
  'shop.doorSill': value('door sill of the machine above the floor', 'mm'),
  'shop.floorRating': value('floor rating', 'kPa'),
  'shop.power.kVA': value('electric supply', 'kVA'),
  'shop.power.volts': value('voltage', 'V'),
  'shop.power.phases': value('phases'),
  'shop.air.flow': value('air supply', 'L/min'),
  'shop.air.bar': value('air pressure', 'bar'),
  'shop.lifting': value('lifting means'),
  'shop.lifting.hoist.capacity': value('capacity of the hoist', 'kg'),
  'shop.lifting.hoist.hookHeight': value('height of the hook', 'mm'),
  'shop.lifting.hoist.legs': value('legs of the sling'),
  'shop.lifting.hoist.slingAngle': value('angle of the sling', '°'),
  'shop.lifting.hoist.slingHeight': value('height of the sling', 'mm'),
  'shop.lifting.hoist.rigging': value('mass of the lifting gear', 'kg'),
  'shop.lifting.forklift.capacity': value('capacity of the forklift', 'kg'),
  'shop.lifting.forklift.loadCenter': value('load center of the forklift', 'mm'),
  'shop.lifting.hand.people': value('people who lift'),
  'shop.lifting.hand.reach': value('reach while lifting', 'mm'),
  'shop.lifting.hand.from': value('height where the lift begins', 'mm'),
  'shop.lifting.hand.lift': value('height of the lift', 'mm'),
  'work.threeAxisShare': value('share of three-axis work', 'share'),
  'work.switchesPerWeek': value('switches of the rotary a week'),
  'work.vise.width': value('width of a vise', 'mm'),
  'work.vise.length': value('length of a vise bed', 'mm'),
  'work.vise.height': value('height of a vise', 'mm'),
  'work.swap': value('how the rotary is swapped'),
  'money.shopRate': value('hourly rate of the shop', 'money'),
  'money.years': value('years looked at', 'years'),
  'money.interest': value('interest', 'share'),
  'money.rigging': value('price of rigging', 'money'),
  'money.training': value('price of training', 'money'),
  'money.yearlyCosts': value('yearly costs', 'money'),
  'money.residual': value('residual value', 'money'),
  'money.plates': value('price of a plate', 'money'),
  'control.cam': value('CAM in the shop'),
  currency: value('currency'),
};
