import type { NotSureKey } from '../../questions/ranges.ts';

/** An answer that an exercise moves: on a grid of steps, within a range that a small shop meets. Units as in the answers. */
export interface DrawnAnswer {
  /** what the range is a part of: what *not sure* stands for */
  readonly within: NotSureKey;
  /** where it stands: of the part, or of all answers */
  readonly of: 'part' | 'answers';
  readonly path: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly unit: string;
}

const ofPart = (
  path: string,
  within: NotSureKey,
  [least, most, step]: readonly [number, number, number],
  unit: string,
): DrawnAnswer => ({ within, of: 'part', path, least, most, step, unit });
const ofShop = (
  path: string,
  within: NotSureKey,
  [least, most, step]: readonly [number, number, number],
  unit: string,
): DrawnAnswer => ({ within, of: 'answers', path, least, most, step, unit });

/** Every answer that an exercise may move. DEVELOPERS.md holds the same table, and a test holds both against each other. */
export const DRAWN_ANSWERS = {
  length: ofPart('size[0]', 'parts.size', [10, 800, 1], 'mm'),
  width: ofPart('size[1]', 'parts.size', [10, 800, 1], 'mm'),
  height: ofPart('size[2]', 'parts.size', [10, 800, 1], 'mm'),
  diameter: ofPart('diameter', 'parts.diameter', [5, 800, 0.5], 'mm'),
  roundLength: ofPart('length', 'parts.length', [5, 800, 1], 'mm'),
  slant: ofPart('approaches[1].slant', 'parts.slant', [5, 89, 1], '°'),
  undercut: ofPart('approaches[1].undercut', 'parts.undercut', [91, 120, 1], '°'),
  depthSide: ofPart('depthSide', 'parts.depthSide', [0, 150, 1], 'mm'),
  tolerance: ofPart('tolerance', 'parts.tolerance', [0.01, 0.5, 0.001], 'mm'),
  fixtureDiameter: ofPart('holding.diameter', 'parts.holding.diameter', [10, 600, 1], 'mm'),
  fixtureHeight: ofPart('holding.height', 'parts.holding.height', [0, 300, 1], 'mm'),
  fixtureMass: ofPart('holding.mass', 'parts.holding.mass', [0.1, 150, 0.1], 'kg'),
  eccentricity: ofPart('eccentricity', 'parts.eccentricity', [0, 200, 1], 'mm'),
  cutDepth: ofPart('cut.ap', 'parts.cut.ap', [0.2, 40, 0.1], 'mm'),
  cuttingSpeed: ofPart('cut.vc', 'parts.cut.vc', [20, 800, 5], 'm/min'),
  contourDepth: ofPart('contourCut.ap', 'parts.cut.ap', [0.1, 40, 0.1], 'mm'),
  drillOffset: ofPart('drill.offset', 'parts.drill.offset', [0, 400, 1], 'mm'),
  contourFeed: ofPart('contour.feed', 'parts.contour.feed', [200, 10000, 50], 'mm/min'),
  contourRadius: ofPart('contour.radius', 'parts.contour.radius', [2, 300, 0.5], 'mm'),
  chordError: ofPart('contour.chordError', 'parts.contour.chordError', [0.001, 0.05, 0.0001], 'mm'),
  shortestTool: ofShop('tools.shortest', 'tools.shortest', [50, 150, 1], 'mm'),
  longestTool: ofShop('tools.longest', 'tools.longest', [90, 300, 1], 'mm'),
  largestCutter: ofShop('tools.largestCutter', 'tools.largestCutter', [6, 80, 1], 'mm'),
  bayLonger: ofShop('shop.bay[0]', 'shop.bay', [2000, 20000, 10], 'mm'),
  bayShorter: ofShop('shop.bay[1]', 'shop.bay', [2000, 20000, 10], 'mm'),
  ceiling: ofShop('shop.ceiling', 'shop.ceiling', [2200, 12000, 10], 'mm'),
  doorWidth: ofShop('shop.doorway.width', 'shop.doorway.width', [800, 6000, 10], 'mm'),
  doorHeight: ofShop('shop.doorway.height', 'shop.doorway.height', [1900, 6000, 10], 'mm'),
  floorRating: ofShop('shop.floorRating', 'shop.floorRating', [2, 50, 0.1], 'kPa'),
  supply: ofShop('shop.power.kVA', 'shop.power.kVA', [3, 250, 0.5], 'kVA'),
  airFlow: ofShop('shop.air.flow', 'shop.air.flow', [10, 5000, 1], 'L/min'),
  airPressure: ofShop('shop.air.bar', 'shop.air.bar', [1, 12, 0.1], 'bar'),
  hoistCapacity: ofShop('shop.lifting[0].capacity', 'shop.lifting.hoist.capacity', [100, 5000, 1], 'kg'),
  hookHeight: ofShop('shop.lifting[0].hookHeight', 'shop.lifting.hoist.hookHeight', [1800, 9000, 10], 'mm'),
  quantity: ofPart('yearly.quantity', 'parts.yearly.quantity', [10, 10000, 10], 'parts'),
  lots: ofPart('yearly.lots', 'parts.yearly.lots', [1, 250, 1], 'lots'),
  cycle: ofPart('yearly.cycleMinutes', 'parts.yearly.cycleMinutes', [1, 480, 1], 'min'),
  fill: ofPart('fill', 'parts.fill', [0.05, 1, 0.01], 'share'),
  threeAxisShare: ofShop('work.threeAxisShare', 'work.threeAxisShare', [0, 1, 0.01], 'share'),
  visesWanted: ofShop('work.visesWanted', 'work.visesWanted', [0, 6, 1], 'vises'),
  shopRate: ofShop('money.shopRate', 'money.shopRate', [25, 200, 1], 'money'),
  budget: ofShop('money.budget', 'money.budget', [10000, 2000000, 500], 'money'),
} as const satisfies Readonly<Record<string, DrawnAnswer>>;

export type DrawnKey = keyof typeof DRAWN_ANSWERS;
