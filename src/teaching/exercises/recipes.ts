import type { Feature } from '../../catalog/catalog.ts';
import type { Candidate } from '../../rules/arranging/candidates.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { RotaryCase } from '../../rules/judging/case.ts';
import { added, CALM, MOVING, oneAxis, part, STACKED, STACKED_HIGH, twoAxes } from './bases.ts';
import type { Base, Recipe, Side } from './recipe.ts';

/** Vises that are wanted beside the rotary, more than find room: it has to come off. */
const SWITCHING: readonly Base[] = [{ work: { visesWanted: 6, switchesPerWeek: 4 } }];
/** Fast with a wide cutter: power before force. Slow: torque before power. */
const FAST_CUT = { cut: { diameter: 63, teeth: 4, ap: 0.5, ae: 20, fz: 0.08, vc: 700 } } as const;
const SLOW_CUT = {
  material: 'steel-alloy',
  cut: { diameter: 63, teeth: 4, ap: 0.5, ae: 20, fz: 0.1, vc: 100 },
} as const;
const DRILL = { material: 'steel-alloy', drill: { diameter: 12, feed: 0.2, offset: 5 } } as const;

const indexer = ({ rotary }: Candidate): boolean => rotary.class === 'collet-indexer';
/** The payload, carried by a stack as high as goes round, is more than so many times the moment that the tilt axis carries. */
export const momentBeforePayload = (rotary: RotaryCase, times: number): boolean =>
  ((rotary.faceOffset.low + rotary.tiltClearRadius.low) / 2000) * 9.80665 * rotary.payloadTilted.low >
  rotary.tiltMoment.low * times;
/** Nothing that the machine offers helps, so that what fails is near its line. */
const plainBelow = ({ machine }: Candidate, side: Side): boolean =>
  side === 'yes' || machine.row.clearance.length === 0;
/** Where a control feature is there or offered, or where it is not. */
const offered =
  (feature: Feature) =>
  ({ machine }: Candidate, side: Side): boolean =>
    (machine.row.features[feature] !== undefined) === (side === 'yes');
/** All axes can move in the cut. */
const moves = ({ machine }: Candidate): boolean => machine.row.features.toolCenterPoint !== undefined;

/** How each check is brought to decide. A new id does not compile without. */
export const RECIPES: Readonly<Record<CheckId, Recipe>> = {
  swing: { bases: CALM, moves: ['fixtureDiameter', 'length', 'diameter'], line: 'number' },
  faceplate: {
    bases: [{ by: 'fixture' }],
    moves: ['length', 'diameter'],
    suits: (candidate, side) => (side === 'no') === indexer(candidate),
    line: 'number',
    onNo: 'yes or no',
  },
  collet: { bases: CALM, moves: ['diameter'], suits: indexer, line: 'number' },
  'tilt-range': {
    bases: [
      part({ approaches: ['top', { slant: 45 }] }),
      part({ approaches: ['top', { undercut: 95 }] }),
      part({ approaches: ['top', 'sides'] }),
    ],
    moves: ['undercut', 'slant'],
    // a single axis is far from every side that it does not reach
    suits: ({ rotary }, side, level) => side === 'yes' || level === 1 || rotary.axes === 2,
    line: 'number',
    onNo: 'rows',
  },
  'tilt-swing': {
    bases: CALM,
    moves: ['fixtureHeight', 'height', 'roundLength'],
    suits: twoAxes,
    line: 'number',
  },
  payload: { bases: CALM, moves: ['fixtureMass'], line: 'number' },
  'tilt-moment': {
    bases: [...STACKED, ...STACKED_HIGH],
    moves: ['fixtureMass'],
    // elsewhere the payload gives way first, even with a stack as high as goes round
    suits: ({ rotary }, side, level) =>
      rotary.axes === 2 &&
      ((side === 'yes' && level === 1) || momentBeforePayload(rotary, side === 'yes' ? 1 : 1.05)),
    line: 'rows',
  },
  'brake-rotary': { bases: [part(DRILL)], moves: ['drillOffset', 'cutDepth'], line: 'number' },
  'brake-tilt': {
    bases: [part(DRILL), {}],
    moves: ['cutDepth', 'drillOffset'],
    suits: twoAxes,
    line: 'number',
  },
  'drive-rotary': { bases: [part(MOVING)], suits: moves, moves: ['contourDepth'], line: 'number' },
  'drive-tilt': {
    bases: [part(MOVING)],
    moves: ['contourDepth'],
    suits: (each) => twoAxes(each) && moves(each),
    line: 'number',
  },
  inertia: {
    bases: [{ load: 0.85 }, { load: 0.7 }],
    moves: ['fixtureDiameter'],
    suits: indexer,
    line: 'number',
  },
  'index-accuracy': { bases: CALM, moves: ['tolerance'], line: 'number' },
  'rotary-speed': {
    bases: [part(MOVING)],
    suits: moves,
    moves: ['contourFeed', 'contourRadius'],
    line: 'number',
  },
  'table-footprint': { bases: CALM, moves: [], suits: added, line: 'rows' },
  'slot-match': { bases: CALM, moves: [], suits: added, line: 'yes or no', neverNo: true },
  'table-load': {
    bases: [{ load: 0.15 }],
    moves: ['fixtureMass'],
    // elsewhere the rotary gives way first
    suits: ({ machine, rotary }) =>
      !machine.builtIn && machine.tableLoad.low - rotary.mass.low < rotary.payloadTilted.low,
    line: 'number',
  },
  'travel-x': {
    bases: CALM,
    moves: ['largestCutter', 'length', 'roundLength', 'fixtureHeight'],
    suits: (each, side, level) =>
      (side === 'yes' && level === 1) || each.machine.travelX.low < 2.2 * each.rotary.swing.low,
    line: 'rows',
  },
  'travel-y': {
    bases: CALM,
    moves: ['largestCutter', 'height', 'roundLength', 'fixtureHeight'],
    suits: (each, side, level) =>
      (side === 'yes' && level === 1) || each.machine.travelY.low < 2.2 * each.rotary.swing.low,
    line: 'rows',
  },
  'reach-high': { bases: CALM, moves: ['longestTool'], suits: plainBelow, line: 'number', onNo: 'rows' },
  'reach-low': { bases: CALM, moves: ['longestTool', 'eccentricity', 'depthSide'], line: 'rows' },
  'index-clear': {
    bases: [part(MOVING)],
    moves: ['longestTool'],
    suits: (each, side) => moves(each) && plainBelow(each, side),
    line: 'number',
    onNo: 'rows',
  },
  'table-clear': {
    bases: [0.55, 0.65, 0.72].map((tall) => ({ tall, part: { approaches: ['top', { undercut: 110 }] } })),
    moves: ['fixtureDiameter', 'length', 'diameter', 'undercut'],
    suits: (each, side) => twoAxes(each) && added(each) && plainBelow(each, side),
    tight: true,
    line: 'number',
    onNo: 'rows',
  },
  'housing-clear': {
    bases: CALM,
    moves: ['longestTool', 'fixtureHeight', 'depthSide'],
    suits: added,
    line: 'number',
  },
  column: { bases: CALM, moves: ['length', 'diameter', 'largestCutter'], line: 'number', onNo: 'rows' },
  'tool-length': {
    bases: [part({ lowestSideFeature: 5, depthSide: 100 }), part({ lowestSideFeature: 5, depthSide: 130 })],
    moves: ['fixtureDiameter', 'depthSide'],
    // only a very wide fixture is out of reach of every tool that can be bought
    suits: ({ rotary }, side) => side === 'yes' || rotary.swing.low >= 560,
    line: 'number',
    onNo: 'rows',
  },
  'spindle-power': { bases: [part(FAST_CUT)], moves: ['cutDepth'], line: 'number' },
  'spindle-torque': {
    bases: [part(SLOW_CUT)],
    moves: ['cutDepth'],
    // elsewhere the brake gives way before the spindle
    suits: ({ machine, rotary }) => rotary.brakeRotary.low > 0.04 * machine.torque.low * rotary.swing.low,
    line: 'number',
  },
  'spindle-speed': { bases: CALM, moves: ['cuttingSpeed'], line: 'number' },
  'axis-drives': {
    bases: CALM,
    moves: [],
    suits: (each, side) =>
      added(each) &&
      (side === 'yes') === each.machine.drivesFitted.low + each.machine.drivesOffered.low >= each.rotary.axes,
    line: 'yes or no',
  },
  tailstock: { bases: CALM, moves: ['width', 'roundLength'], suits: oneAxis, line: 'number' },
  'tool-center-point': {
    bases: [part(MOVING)],
    moves: [],
    suits: offered('toolCenterPoint'),
    line: 'yes or no',
  },
  'rotating-work-offset': {
    bases: [part({ eccentricity: 5 })],
    moves: [],
    suits: offered('rotatingWorkOffset'),
    line: 'yes or no',
  },
  'tilted-work-plane': {
    bases: [part({ eccentricity: 5 })],
    moves: [],
    suits: (each, side) => twoAxes(each) && offered('tiltedWorkPlane')(each, side),
    line: 'yes or no',
  },
  'look-ahead': {
    bases: [part(MOVING), part({ motion: 'surfaces' })],
    moves: ['contourFeed', 'chordError'],
    line: 'rows',
  },
  bay: { bases: CALM, moves: ['bayLonger', 'bayShorter'], line: 'number' },
  ceiling: { bases: CALM, moves: ['ceiling'], line: 'number' },
  doorway: { bases: CALM, moves: ['doorWidth', 'doorHeight'], line: 'number' },
  'floor-load': { bases: CALM, moves: ['floorRating'], line: 'number' },
  power: { bases: CALM, moves: ['supply'], line: 'number' },
  air: { bases: CALM, moves: ['airFlow', 'airPressure'], line: 'number' },
  lift: { bases: SWITCHING, moves: ['hoistCapacity'], suits: added, line: 'number' },
  'hook-height': { bases: SWITCHING, moves: ['hookHeight'], suits: added, line: 'number' },
  budget: { bases: CALM, moves: ['budget'], line: 'number' },
};
