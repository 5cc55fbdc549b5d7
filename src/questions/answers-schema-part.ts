import * as z from 'zod';
import { eitherField } from '../documents/fields/either-field.ts';
import { report } from '../documents/fields/fault.ts';
import { choiceField, flagField, requiredChoiceField, textField } from '../documents/fields/plain-fields.ts';
import {
  absentUncertainField,
  uncertainField,
  uncertainListField,
} from '../documents/fields/quantity-fields.ts';
import { isMap, optionalMap, strictMap } from '../documents/fields/strict-map.ts';
import { MATERIAL_IDS } from '../mechanics/forces/materials.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { type Approach, HOLDINGS, MOTIONS, type Part, SHAPES, STANDS } from './answers.ts';
import { contourShape, cutField, drillField } from './answers-schema-cut.ts';

/** One part of the mix, that is one family of alike parts. */
export function partField(units: LengthUnits): z.ZodType<Part> {
  const length = { kind: 'length', units } as const;
  const size = { above: 0, most: 5000 };
  const depth = { least: 0, most: 5000 };
  const map = strictMap(
    {
      name: textField({ means: 'the name of the part', longest: 80 }),
      shape: choiceField(SHAPES, 'block or round', 'unknown'),
      size: uncertainListField({ ...length, limits: size, means: 'size of a block as it stands' }, [
        'length',
        'width',
        'height',
      ]),
      diameter: uncertainField({ ...length, limits: size, means: 'diameter of a round part' }),
      length: uncertainField({ ...length, limits: size, means: 'length of a round part' }),
      stands: choiceField(STANDS, 'how a round part stands', 'unknown'),
      material: choiceField(MATERIAL_IDS, 'what it is made of', 'unknown'),
      mass: uncertainField({
        kind: 'mass',
        units,
        limits: { above: 0, most: 20_000 },
        means: 'mass; left out: from size, density and fill',
      }),
      fill: uncertainField(
        {
          kind: 'share',
          units,
          limits: { above: 0, most: 1 },
          means: 'share of the block or cylinder that is material',
        },
        1,
      ),
      approaches: approachesField(units),
      bottom: flagField('whether the face it stands on is cut too', 'unknown'),
      motion: choiceField(MOTIONS, 'positional (3+2), simultaneous, or surfaces (3D, tilt fixed)', 'unknown'),
      depthTop: uncertainField({ ...length, limits: depth, means: 'deepest feature from the top' }),
      depthSide: uncertainField({ ...length, limits: depth, means: 'deepest feature from a side' }),
      lowestSideFeature: uncertainField({
        ...length,
        limits: depth,
        means: 'lowest feature on a side, above the fixture',
      }),
      tolerance: uncertainField({ ...length, limits: { above: 0, most: 10 }, means: '± between faces' }),
      holding: holdingField(units),
      eccentricity: uncertainField(
        {
          ...length,
          limits: { least: 0, most: 2000 },
          means: "distance of the part's axis from the rotary axis",
        },
        0,
      ),
      cut: cutField(units, 'the heaviest cut, axes clamped'),
      contourCut: cutField(units, 'the heaviest cut while axes move'),
      drill: drillField(units),
      contour: optionalMap(contourShape(units), { means: 'the path, for simultaneous work and surfaces' }),
      yearly: yearlyField(units),
      must: flagField('whatever is chosen must hold it', false),
    },
    { means: 'a part, that is a family of alike parts' },
  );
  return z.preprocess(withStands, map);
}

/** A block stands upright: its height is the last of its sizes. */
function withStands(raw: unknown): unknown {
  if (!isMap(raw) || raw.shape !== 'block') return raw;
  return raw.stands === undefined || raw.stands === null ? { ...raw, stands: 'upright' } : raw;
}

function holdingField(units: LengthUnits) {
  const length = { kind: 'length', units } as const;
  return optionalMap(
    {
      by: choiceField(HOLDINGS, 'what it is held by', 'unknown'),
      diameter: uncertainField({
        ...length,
        limits: { least: 0, most: 5000 },
        means: 'plan diameter of the fixture',
      }),
      height: uncertainField({ ...length, limits: { least: 0, most: 2000 }, means: 'height of the fixture' }),
      mass: uncertainField({
        kind: 'mass',
        units,
        limits: { least: 0, most: 20_000 },
        means: 'mass of the fixture',
      }),
    },
    { means: 'what stands between the faceplate and the part' },
  );
}

function yearlyField(units: LengthUnits) {
  const count = { kind: 'count', units } as const;
  const minutes = (means: string, most: number) =>
    uncertainField({ kind: 'minutes', units, limits: { least: 0, most }, means });
  return optionalMap(
    {
      quantity: uncertainField({ ...count, limits: { least: 0, most: 1e7 }, means: 'pieces a year' }),
      lots: uncertainField({ ...count, limits: { least: 0, most: 1e5 }, means: 'lots a year' }),
      setups: uncertainField({
        ...count,
        limits: { least: 0, most: 100 },
        means: 'setups a piece goes through now',
      }),
      setupMinutes: minutes('time to make one setup ready', 10_000),
      cycleMinutes: minutes('time on the machine a piece, all setups together', 100_000),
      handlingMinutes: minutes('time to load and unload, each setup', 10_000),
    },
    { means: 'the work of a year as it is done now' },
  );
}

/** Directions from which the tool comes; each named once, angles as often as there are any. */
function approachesField(units: LengthUnits) {
  const angle = { kind: 'angle', units } as const;
  const word = requiredChoiceField(['top', 'sides', 'around'], 'a direction');
  const slanted = strictMap(
    {
      slant: absentUncertainField({
        ...angle,
        limits: { above: 0, below: 90 },
        means: "angle from the part's axis",
      }),
      undercut: absentUncertainField({
        ...angle,
        limits: { above: 90, most: 180 },
        means: "angle from the part's axis",
      }),
    },
    { means: 'an angle from the part’s axis: slant below 90, undercut above' },
  ).transform(({ slant, undercut }, context): Approach => {
    if (slant !== undefined && undercut === undefined) return { slant };
    if (undercut !== undefined && slant === undefined) return { undercut };
    const found = slant === undefined ? 'is empty' : 'has two angles';
    report(context, { found, expected: 'expected {slant: …} or {undercut: …}, each in an entry of its own' });
    return z.NEVER;
  });
  const expected = 'expected top, sides, around, {slant: 35} or {undercut: 100}';
  const approach = eitherField<'top' | 'sides' | 'around', never, Approach>(
    { text: word, map: slanted },
    { means: 'a direction from which the tool comes', expected },
  );
  const list = z.array(approach).min(1).max(20).superRefine(refuseDoubles);
  const unknown = choiceField([], 'not known', 'unknown');
  const field = eitherField<'unknown', Approach[]>(
    { text: unknown, list },
    { means: 'directions from which the tool comes', expected: 'expected a list such as [top, sides]' },
  );
  return z._default(field, 'unknown');
}

function refuseDoubles(approaches: readonly Approach[], context: z.core.$RefinementCtx): void {
  const seen = new Set<string>();
  for (const [index, approach] of approaches.entries()) {
    const key = JSON.stringify(approach);
    const known = key.includes('unknown') === false;
    if (known && seen.has(key)) {
      report(context, { path: [index], found: 'stands twice', expected: 'expected each direction once' });
    }
    seen.add(key);
  }
}
