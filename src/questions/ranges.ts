import type { Interval } from '../quantities/interval.ts';

/**
 * What 'not sure' stands for: the range that an unknown answer is taken to lie in. Wide enough for what a
 * small shop meets; a value outside it can always be answered. Shown beside the question and in the report.
 * Units as in the answers (mm, kg, degrees, minutes, money); keys are answer paths without the part's name. A means
 * of lifting has its kind in the path: `shop.lifting.hoist.capacity`.
 */
export const NOT_SURE = {
  'parts.size': { low: 5, high: 1000 },
  'parts.diameter': { low: 3, high: 1000 },
  'parts.length': { low: 3, high: 1000 },
  'parts.mass': { low: 0.01, high: 1500 },
  'parts.fill': { low: 0.05, high: 1 },
  'parts.slant': { low: 1, high: 89 },
  'parts.undercut': { low: 91, high: 120 },
  'parts.depthTop': { low: 0, high: 150 },
  'parts.depthSide': { low: 0, high: 150 },
  'parts.lowestSideFeature': { low: 0, high: 500 },
  'parts.tolerance': { low: 0.005, high: 0.5 },
  'parts.holding.diameter': { low: 0, high: 600 },
  'parts.holding.height': { low: 0, high: 300 },
  'parts.holding.mass': { low: 0, high: 150 },
  'parts.eccentricity': { low: 0, high: 200 },
  'parts.cut.diameter': { low: 1, high: 80 },
  'parts.cut.teeth': { low: 1, high: 10 },
  'parts.cut.ap': { low: 0.1, high: 40 },
  'parts.cut.ae': { low: 0.1, high: 80 },
  'parts.cut.fz': { low: 0.01, high: 0.4 },
  'parts.cut.vc': { low: 10, high: 800 },
  'parts.drill.diameter': { low: 1, high: 40 },
  'parts.drill.feed': { low: 0.02, high: 0.5 },
  'parts.drill.offset': { low: 0, high: 500 },
  'parts.contour.feed': { low: 200, high: 10000 },
  'parts.contour.radius': { low: 1, high: 500 },
  'parts.contour.chordError': { low: 0.001, high: 0.05 },
  'parts.yearly.quantity': { low: 1, high: 10000 },
  'parts.yearly.lots': { low: 1, high: 250 },
  'parts.yearly.setups': { low: 1, high: 8 },
  'parts.yearly.setupMinutes': { low: 5, high: 240 },
  'parts.yearly.cycleMinutes': { low: 0.5, high: 480 },
  'parts.yearly.handlingMinutes': { low: 0.2, high: 30 },
  'tools.shortest': { low: 50, high: 150 },
  'tools.longest': { low: 90, high: 300 },
  'tools.largestCutter': { low: 6, high: 80 },
  // from a garage to a hall
  'shop.bay': { low: 2000, high: 20000 },
  'shop.ceiling': { low: 2200, high: 12000 },
  // from the door of a house to a gate for trucks
  'shop.doorway.width': { low: 800, high: 6000 },
  'shop.doorway.height': { low: 1900, high: 6000 },
  // from the sill of a low table machine to one above a high bed
  'shop.doorSill': { low: 600, high: 1400 },
  // from the upper floor of a dwelling to a slab made for industry
  'shop.floorRating': { low: 2, high: 50 },
  // from the circuit of a household to a transformer of one's own, at the voltages that there are in the world
  'shop.power.kVA': { low: 3, high: 250 },
  'shop.power.volts': { low: 100, high: 690 },
  'shop.power.phases': { low: 1, high: 3 },
  // from no compressor at all to that of a large shop
  'shop.air.flow': { low: 0, high: 5000 },
  'shop.air.bar': { low: 0, high: 12 },
  // from a hand chain hoist on a beam to the crane of a hall; slings as they are sold and hung
  'shop.lifting.hoist.capacity': { low: 100, high: 10000 },
  'shop.lifting.hoist.hookHeight': { low: 1800, high: 9000 },
  'shop.lifting.hoist.legs': { low: 1, high: 4 },
  'shop.lifting.hoist.slingAngle': { low: 30, high: 90 },
  'shop.lifting.hoist.slingHeight': { low: 0, high: 2000 },
  'shop.lifting.hoist.rigging': { low: 0, high: 100 },
  // from a stacker that is pushed by hand to a truck for heavy goods
  'shop.lifting.forklift.capacity': { low: 500, high: 10000 },
  'shop.lifting.forklift.loadCenter': { low: 400, high: 900 },
  // what arms and backs allow: from close to the body to arms stretched out, from the floor to the shoulders
  'shop.lifting.hand.people': { low: 1, high: 4 },
  'shop.lifting.hand.reach': { low: 250, high: 700 },
  'shop.lifting.hand.from': { low: 0, high: 1500 },
  'shop.lifting.hand.lift': { low: 0, high: 1500 },
  'work.threeAxisShare': { low: 0, high: 1 },
  // from never to several times a day
  'work.switchesPerWeek': { low: 0, high: 20 },
  'work.visesWanted': { low: 0, high: 6 },
  'work.vise.width': { low: 75, high: 250 },
  'work.vise.length': { low: 200, high: 700 },
  'work.vise.height': { low: 40, high: 150 },
  'money.budget': { low: 0, high: Number.POSITIVE_INFINITY },
  // money: in one like the euro or the dollar. From a shop in a garage to one with expensive people in an expensive town
  'money.shopRate': { low: 25, high: 200 },
  // from a lease that runs out to the life of a machine that is looked after
  'money.years': { low: 3, high: 10 },
  'money.interest': { low: 0, high: 0.15 },
  // from a friend with a truck to a crane, a rigging crew and a new floor
  'money.rigging': { low: 0, high: 15000 },
  'money.training': { low: 0, high: 15000 },
  'money.yearlyCosts': { low: 0, high: 10000 },
  // never more than what was paid for it
  'money.residual': { low: 0, high: Number.POSITIVE_INFINITY },
  'money.plates': { low: 0, high: 5000 },
} as const satisfies Record<string, Interval>;

export type NotSureKey = keyof typeof NOT_SURE;
