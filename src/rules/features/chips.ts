import { MATERIALS } from '../../mechanics/forces/materials.ts';
import type { Part } from '../../questions/answers.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import { corners } from '../facts/corners.ts';
import { answered, derived, known, type Value } from '../judging/value.ts';
import { above, hoursWhere, most, NOTHING } from './finding.ts';
import { defineFeature, type FeatureGround } from './rule.ts';

/** A hole can be as deep as the deepest feature of its part: an upper estimate. */
function holeDepth({ covered, partOf }: FeatureGround): {
  readonly value: Value;
  readonly parts: readonly string[];
} {
  const holes = covered.flatMap(({ family }) => {
    const { drill } = partOf(family.name);
    const [of] = family.cases;
    if (drill === null || of === undefined) return [];
    const path = `parts[${family.name}].drill.diameter`;
    const diameter = answered(drill.diameter, path, NOT_SURE['parts.drill.diameter']);
    const from = [of.depthTop, of.depthSide, diameter];
    const ends = corners(from, ([top = 0, side = 0, d = 1]) => Math.max(top, side) / d);
    return [{ name: family.name, ratio: derived(ends, 'depth in diameters', from) }];
  });
  return {
    value: most(
      holes.map(({ ratio }) => ratio),
      'depth in diameters',
    ),
    parts: holes.map(({ name }) => name),
  };
}

/** Materials that heat a drill more than they let go. */
export const TOUGH: ReadonlySet<Part['material']> = new Set<Part['material']>(['titanium', 'nickel-alloy']);

const DRILL = { feed: 0.1, offset: 20 } as const;

export const throughSpindleCoolant = defineFeature({
  id: 'throughSpindleCoolant',
  offer: null,
  unit: '',
  find: (of) => {
    const { value, parts } = holeDepth(of);
    const tough = of.covered.filter(({ family }) => TOUGH.has(of.partOf(family.name).material));
    const limit = known(of.shop.assume.deepHole, 'assume.deepHole');
    const found = above(
      value,
      limit,
      { need: 'required', why: 'hole-deep', parts },
      tough.length > 0
        ? { need: 'worth having', why: 'tough-material' }
        : { need: 'not needed', why: 'holes-shallow' },
    );
    return found.why === 'tough-material'
      ? { ...found, parts: tough.map(({ family }) => family.name) }
      : found;
  },
  source: 'common practice, no source; the depth in diameters is an assumption',
  examples: [
    {
      what: 'a hole of 9 diameters',
      given: { parts: [{ tolerance: 0.5, depthTop: 27, depthSide: 20, drill: { diameter: 3, ...DRILL } }] },
      need: 'required',
      number: 9,
    },
    {
      what: 'a hole of 5 diameters',
      given: { parts: [{ tolerance: 0.5, depthTop: 20, depthSide: 20, drill: { diameter: 4, ...DRILL } }] },
      need: 'not needed',
      number: 5,
    },
    {
      what: 'no holes, but titanium',
      given: { parts: [{ tolerance: 0.5, material: 'titanium' }] },
      need: 'worth having',
    },
  ],
});

const CUBIC_MM_PER_LITER = 1e6;

/** Metal cut away in a year: what of each blank is not part. */
function liters(part: Part, { cases }: FeatureGround['covered'][number]['family']): Value {
  const [of] = cases;
  if (of === undefined) return NOTHING;
  const at = `parts[${part.name}]`;
  const quantity = answered(part.yearly.quantity, `${at}.yearly.quantity`, NOT_SURE['parts.yearly.quantity']);
  const fill = answered(part.fill, `${at}.fill`, NOT_SURE['parts.fill']);
  const round = of.shape === 'round' ? Math.PI / 4 : 1;
  const from = [of.length, of.width, of.height, quantity, fill];
  const ends = corners(
    from,
    ([a = 0, b = 0, h = 0, count = 0, share = 1]) =>
      (a * b * h * round * count * (1 - share)) / CUBIC_MM_PER_LITER,
  );
  return derived(ends, 'liters', from);
}

export const chipConveying = defineFeature({
  id: 'chipConveying',
  offer: null,
  unit: 'l/h',
  find: (of) => {
    const all = of.covered.map(({ family }) => ({ family, metal: liters(of.partOf(family.name), family) }));
    const sum = (end: 'low' | 'high'): number => all.reduce((total, { metal }) => total + metal[end], 0);
    const time = (end: 'low' | 'high'): number =>
      all.reduce((total, { family }) => total + family.hours[end], 0);
    const rate = {
      low: time('high') > 0 ? sum('low') / time('high') : 0,
      high: time('low') > 0 ? sum('high') / time('low') : 0,
    };
    const from = all.flatMap(({ family, metal }) => [family.hours, metal]);
    return above(
      derived(rate, 'metal cut in an hour', from),
      known(of.shop.assume.chipLiters, 'assume.chipLiters'),
      { need: 'worth having', why: 'chips-many' },
      { need: 'not needed', why: 'chips-few' },
    );
  },
  source: 'volume of the blank less the part; the line is an assumption',
  examples: [
    {
      what: 'nine tenths of large blanks are cut away',
      given: {
        parts: [
          {
            tolerance: 0.5,
            size: [90, 90, 90],
            fill: 0.1,
            yearly: { quantity: 4000, lots: 1, setups: 1, cycleMinutes: 8 },
          },
        ],
      },
      need: 'worth having',
    },
    {
      what: 'nothing is cut away to speak of',
      given: { parts: [{ tolerance: 0.5 }] },
      need: 'not needed',
      number: 0,
    },
  ],
});

export const mistAndFire = defineFeature({
  id: 'mistAndFire',
  offer: null,
  unit: 'h',
  find: (of) => {
    const { value, parts } = hoursWhere(
      of,
      ({ name }) => {
        const { material } = of.partOf(name);
        return material === 'unknown' ? 'perhaps' : MATERIALS[material].combustible ? 'yes' : 'no';
      },
      'hours with chips that burn',
    );
    return above(
      value,
      NOTHING,
      { need: 'required', why: 'chips-burn', parts },
      { need: 'not needed', why: 'chips-do-not-burn' },
    );
  },
  source: 'fine chips of titanium and magnesium burn; local code decides',
  examples: [
    { what: 'titanium', given: { parts: [{ tolerance: 0.5, material: 'titanium' }] }, need: 'required' },
    {
      what: 'brass',
      given: { parts: [{ tolerance: 0.5, material: 'brass' }] },
      need: 'not needed',
      number: 0,
    },
  ],
});
