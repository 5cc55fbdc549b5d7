import type { Interval } from '../quantities/interval.ts';

/**
 * What 'not sure' stands for: the range that an unknown answer is taken to lie in. Wide enough for what a
 * small shop meets; a value outside it can always be answered. Shown beside the question and in the report.
 * Units as in the answers (mm, kg, degrees, minutes, money); keys are answer paths without the part's name.
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
  'work.visesWanted': { low: 0, high: 6 },
  'work.vise.width': { low: 75, high: 250 },
  'work.vise.length': { low: 200, high: 700 },
  'work.vise.height': { low: 40, high: 150 },
  'money.budget': { low: 0, high: Number.POSITIVE_INFINITY },
  'money.plates': { low: 0, high: 5000 },
} as const satisfies Record<string, Interval>;

export type NotSureKey = keyof typeof NOT_SURE;
