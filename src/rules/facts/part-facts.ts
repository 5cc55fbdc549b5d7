import { drillThrust } from '../../mechanics/forces/drill-thrust.ts';
import { MATERIAL_IDS, MATERIALS } from '../../mechanics/forces/materials.ts';
import { blockPlanRadius } from '../../mechanics/geometry/block-plan-radius.ts';
import { hull, type Interval } from '../../quantities/interval.ts';
import type { Approach, Part } from '../../questions/answers.ts';
import { NOT_SURE, type NotSureKey } from '../../questions/ranges.ts';
import type { ApproachCase, PartCase, ShopCase } from '../judging/case.ts';
import { answered, derived, type Hanging, known, openAnswer, type Value } from '../judging/value.ts';
import { corners } from './corners.ts';
import { cutFacts } from './cut-facts.ts';
import { type Kinds, kindsOf } from './part-kinds.ts';

/** One family as the checks read it: once for each choice among kinds that its unknown answers leave open. */
export function partCases(part: Part, shop: ShopCase): readonly PartCase[] {
  const root = `parts[${part.name}]`;
  return kindsOf(part, root).map((kinds, index) => partCase(part, kinds, shop, root, index));
}

function partCase(part: Part, kinds: Kinds, shop: ShopCase, root: string, index: number): PartCase {
  const read = (value: Part['fill'], name: string, key: NotSureKey): Value =>
    answered(value, `${root}.${name}`, NOT_SURE[key]);
  const size = sizeOf(part, kinds, root);
  const approaches = kinds.approaches.map((each): ApproachCase => approachCase(each, root));
  const { holding, contour } = part;
  const cut = cutFacts(part.cut, part.material, shop.largestCutter, `${root}.cut`, `${root}.material`);
  return {
    key: `${part.name}#${index}`,
    slot: 0,
    name: part.name,
    shape: isUpright(kinds) ? 'round' : 'block',
    motion: kinds.motion,
    heldByCollet: kinds.heldByCollet,
    interrupted: typeof part.cut === 'object' && part.cut.interrupted,
    approaches,
    kinds: kinds.open,
    ...size,
    planRadius: planRadius(kinds, size, root),
    eccentricity: read(part.eccentricity, 'eccentricity', 'parts.eccentricity'),
    mass: massOf(part, size, kinds, root),
    tilt: greatestAngle(approaches, root),
    fixtureDiameter: read(holding.diameter, 'holding.diameter', 'parts.holding.diameter'),
    fixtureHeight: read(holding.height, 'holding.height', 'parts.holding.height'),
    fixtureMass: read(holding.mass, 'holding.mass', 'parts.holding.mass'),
    depthTop: read(part.depthTop, 'depthTop', 'parts.depthTop'),
    depthSide: read(part.depthSide, 'depthSide', 'parts.depthSide'),
    lowestSideFeature: read(part.lowestSideFeature, 'lowestSideFeature', 'parts.lowestSideFeature'),
    tolerance: read(part.tolerance, 'tolerance', 'parts.tolerance'),
    brakeSafety: brakeSafety(part, shop, root),
    cut,
    contourCut: cutFacts(
      part.contourCut,
      part.material,
      shop.largestCutter,
      `${root}.contourCut`,
      `${root}.material`,
    ),
    ...drillFacts(part, root),
    contourFeed: read(contour.feed, 'contour.feed', 'parts.contour.feed'),
    contourRadius: read(contour.radius, 'contour.radius', 'parts.contour.radius'),
    chordError: read(contour.chordError, 'contour.chordError', 'parts.contour.chordError'),
  };
}

const isUpright = ({ body }: Kinds): boolean => body === 'round upright';

type Size = Pick<PartCase, 'length' | 'width' | 'height'>;

/** Extents as it stands. A round part lying down is a block as long as it, its diameter wide and high. */
function sizeOf(part: Part, kinds: Kinds, root: string): Size {
  if (kinds.body !== 'block') {
    const diameter = answered(part.diameter, `${root}.diameter`, NOT_SURE['parts.diameter']);
    const length = answered(part.length, `${root}.length`, NOT_SURE['parts.length']);
    return isUpright(kinds)
      ? { length: diameter, width: diameter, height: length }
      : { length, width: diameter, height: diameter };
  }
  const [length, width, height] = part.size.map((each, index) =>
    answered(each, `${root}.size[${index}]`, NOT_SURE['parts.size']),
  ) as [Value, Value, Value];
  return { length, width, height };
}

function planRadius(kinds: Kinds, size: Size, root: string): Value {
  if (isUpright(kinds)) {
    const half = corners([size.length], ([d = 0]) => d / 2);
    return derived(half, `${root}.planRadius`, [size.length]);
  }
  const half = corners([size.length, size.width], ([a = 0, b = 0]) => blockPlanRadius(a, b));
  return derived(half, `${root}.planRadius`, [size.length, size.width]);
}

const CUBIC_MM_PER_CUBIC_M = 1e9;

/** The mass that was given, else size × density × fill. */
function massOf(part: Part, size: Size, kinds: Kinds, root: string): Value {
  if (part.mass !== 'unknown') return answered(part.mass, `${root}.mass`, NOT_SURE['parts.mass']);
  const densities = part.material === 'unknown' ? MATERIAL_IDS : [part.material];
  const density: Interval = hull(
    densities.map((id) => ({
      low: MATERIALS[id].density,
      high: MATERIALS[id].density,
    })),
  );
  const fill = answered(part.fill, `${root}.fill`, NOT_SURE['parts.fill']);
  const isRound = kinds.body !== 'block';
  const mass = corners(
    [size.length, size.width, size.height, density, fill],
    ([a = 0, b = 0, h = 0, rho = 0, share = 0]) =>
      (a * b * h * (isRound ? Math.PI / 4 : 1) * rho * share) / CUBIC_MM_PER_CUBIC_M,
  );
  const material = part.material === 'unknown' ? openAnswer(`${root}.material`) : [];
  return derived(mass, `${root}.mass`, [size.length, size.width, size.height, fill, ...material]);
}

function approachCase(approach: Approach, root: string): ApproachCase {
  if (typeof approach === 'string') return { kind: approach };
  if ('slant' in approach)
    return {
      kind: 'slant',
      angle: answered(approach.slant, `${root}.approaches.slant`, NOT_SURE['parts.slant']),
    };
  return {
    kind: 'undercut',
    angle: answered(approach.undercut, `${root}.approaches.undercut`, NOT_SURE['parts.undercut']),
  };
}

function greatestAngle(approaches: readonly ApproachCase[], root: string): Value {
  const path = `${root}.tilt`;
  const angles = approaches.map((each) =>
    'angle' in each ? each.angle : known(each.kind === 'top' ? 0 : 90, path),
  );
  const low = Math.max(0, ...angles.map((each) => each.low));
  const high = Math.max(0, ...angles.map((each) => each.high));
  return derived({ low, high }, path, angles);
}

/** Interrupted cuts ask for more; a cut that nobody knows may be one. */
function brakeSafety(part: Part, { assume }: ShopCase, root: string): Value {
  if (typeof part.cut === 'object')
    return known(
      part.cut.interrupted ? assume.brakeSafetyInterrupted : assume.brakeSafety,
      `${root}.brakeSafety`,
    );
  if (part.cut !== 'unknown') return known(assume.brakeSafety, 'assume.brakeSafety');
  const low = Math.min(assume.brakeSafety, assume.brakeSafetyInterrupted);
  const high = Math.max(assume.brakeSafety, assume.brakeSafetyInterrupted);
  return derived({ low, high }, `${root}.brakeSafety`, openAnswer(`${root}.cut`));
}

function drillFacts(part: Part, root: string): Pick<PartCase, 'drillThrust' | 'drillOffset'> {
  if (part.drill === null) return { drillThrust: null, drillOffset: null };
  const at = `${root}.drill`;
  const diameter = answered(part.drill.diameter, `${at}.diameter`, NOT_SURE['parts.drill.diameter']);
  const feed = answered(part.drill.feed, `${at}.feed`, NOT_SURE['parts.drill.feed']);
  const rows =
    part.material === 'unknown' ? MATERIAL_IDS.map((id) => MATERIALS[id]) : [MATERIALS[part.material]];
  const thrust = hull(
    rows.map((row) =>
      corners([diameter, feed], ([d = 0, f = 0]) => drillThrust({ ...row, diameter: d, feed: f })),
    ),
  );
  const gaps: readonly Hanging[] = part.material === 'unknown' ? openAnswer(`${root}.material`) : [];
  return {
    drillThrust: derived(thrust, `${at}.thrust`, [diameter, feed, ...gaps]),
    drillOffset: answered(part.drill.offset, `${at}.offset`, NOT_SURE['parts.drill.offset']),
  };
}

/** Is any approach of the part five-axis work: anything besides the top? Not known counts as five-axis. */
export const isFiveAxis = (part: Part): boolean =>
  part.approaches === 'unknown' || part.approaches.some((each) => each !== 'top');
