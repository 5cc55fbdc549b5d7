import * as z from 'zod';
import { eitherField } from '../documents/fields/either-field.ts';
import { report } from '../documents/fields/fault.ts';
import { choiceField, flagField } from '../documents/fields/plain-fields.ts';
import { uncertainField } from '../documents/fields/quantity-fields.ts';
import { strictMap } from '../documents/fields/strict-map.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { type Contour, CUT_SIZES, type Cut, type Drill, type Uncertain } from './answers.ts';
import { surelyLess } from './surely-less.ts';

/** A cut: one of three sizes, or its numbers. Left out: `unknown`. */
export function cutField(units: LengthUnits, means: string): z.ZodType<Cut> {
  const size = choiceField(CUT_SIZES, 'a size of cut', 'unknown');
  const field = eitherField(
    { text: size, map: cutDetail(units) },
    { means, expected: 'expected light, medium, heavy, or the numbers of the cut' },
  );
  return z._default(field, 'unknown');
}

function cutDetail(units: LengthUnits) {
  const length = (means: string) =>
    uncertainField({ kind: 'length', units, limits: { above: 0, most: 500 }, means });
  const map = strictMap(
    {
      diameter: length('diameter of the cutter'),
      teeth: uncertainField({
        kind: 'count',
        units,
        limits: { least: 1, most: 100, whole: true },
        means: 'teeth of the cutter',
      }),
      ap: length('depth of cut along the cutter'),
      ae: length('width of cut across the cutter'),
      fz: uncertainField({
        kind: 'feedPerTooth',
        units,
        limits: { above: 0, most: 5 },
        means: 'feed per tooth',
      }),
      vc: uncertainField({
        kind: 'cuttingSpeed',
        units,
        limits: { least: 1, most: 5000 },
        means: 'cutting speed',
      }),
      interrupted: flagField(
        'the cutter leaves the work and comes back, beyond what every cutter does',
        false,
      ),
    },
    { means: 'the cut in numbers' },
  );
  return map.superRefine((cut, context) => {
    if (!surelyMore(cut.ae, cut.diameter)) return;
    const found = 'is wider than the cutter';
    report(context, { path: ['ae'], found, expected: 'expected at most its diameter' });
  });
}

const surelyMore = (value: Uncertain, limit: Uncertain): boolean => surelyLess(limit, value);

/** A hole to be drilled off the axis; null: none. `unknown`: there is one, its numbers are not known. */
export function drillField(units: LengthUnits): z.ZodType<Drill | null> {
  const map = strictMap(
    {
      diameter: uncertainField({
        kind: 'length',
        units,
        limits: { above: 0, most: 200 },
        means: 'diameter of the drill',
      }),
      feed: uncertainField({
        kind: 'feedPerTurn',
        units,
        limits: { above: 0, most: 5 },
        means: 'feed per turn',
      }),
      offset: uncertainField({
        kind: 'length',
        units,
        limits: { least: 0, most: 5000 },
        means: 'distance of the hole from the axis that has to hold it',
      }),
    },
    { means: 'the drill that pushes hardest off the axis' },
  );
  const words = choiceField(['none'], 'no such hole', 'unknown').transform((word): Drill | null =>
    word === 'none' ? null : { diameter: 'unknown', feed: 'unknown', offset: 'unknown' },
  );
  const field = eitherField<Drill | null, never, Drill>(
    { text: words, map },
    { means: 'a large hole drilled off the axis', expected: 'expected none, or the numbers of the drill' },
  );
  return z._default(field, null);
}

/** How a path is followed with all axes moving, or on a surface. */
export const contourShape = (units: LengthUnits) =>
  ({
    feed: uncertainField({
      kind: 'feed',
      units,
      limits: { least: 1, most: 100_000 },
      means: 'feed along the path',
    }),
    radius: uncertainField({
      kind: 'length',
      units,
      limits: { above: 0, most: 5000 },
      means: 'radius of the tightest curve',
    }),
    chordError: uncertainField({
      kind: 'length',
      units,
      limits: { above: 0, most: 1 },
      means: 'how far the path may leave the true surface',
    }),
  }) satisfies Record<keyof Contour, z.ZodType<Uncertain>>;
