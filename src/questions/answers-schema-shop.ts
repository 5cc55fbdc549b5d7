import * as z from 'zod';
import { eitherField } from '../documents/fields/either-field.ts';
import { report } from '../documents/fields/fault.ts';
import { choiceField, optionalTextField, requiredChoiceField } from '../documents/fields/plain-fields.ts';
import { quantitiesIn, uncertainField, uncertainListField } from '../documents/fields/quantity-fields.ts';
import { optionalMap, strictMap } from '../documents/fields/strict-map.ts';
import type { Limits } from '../quantities/faults.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import {
  type Answers,
  CAMS,
  type Lifting,
  LOADINGS,
  type Money,
  type Shop,
  SWAPS,
  type Work,
} from './answers.ts';
import { surelyLess } from './surely-less.ts';

/** The building, and what is in it. */
export function shopField(units: LengthUnits): z.ZodType<Shop> {
  const of = quantitiesIn(units);
  const length = (means: string, most = 1e6) => of('length', { above: 0, most }, means);
  const from0 = { least: 0, most: 1e6 };
  return optionalMap(
    {
      machine: optionalTextField(
        { means: 'id of the mill that is owned already, or none', longest: 60 },
        'unknown',
      ),
      bay: uncertainListField(length('room for the machine'), ['one way', 'the other way']),
      ceiling: uncertainField(length('height of the ceiling')),
      doorway: optionalMap(
        { width: uncertainField(length('width')), height: uncertainField(length('height')) },
        { means: 'the narrowest opening on the way in' },
      ),
      doorSill: uncertainField(
        of('length', from0, "the machine's door sill above the floor, for lifting in"),
      ),
      floorRating: uncertainField(of('floorLoad', { above: 0, most: 1e5 }, 'what the floor may carry')),
      power: optionalMap(
        {
          kVA: uncertainField(of('apparentPower', { above: 0, most: 1e5 }, 'connected load that is free')),
          volts: uncertainField(of('voltage', { above: 0, most: 1e5 }, 'between phases')),
          phases: uncertainField(of('count', { least: 1, most: 3, whole: true }, '1 or 3')),
        },
        { means: 'electric supply' },
      ),
      air: optionalMap(
        {
          flow: uncertainField(of('airFlow', from0, 'what the compressor gives')),
          bar: uncertainField(of('pressure', { least: 0, most: 1000 }, 'its pressure')),
        },
        { means: 'compressed air' },
      ),
      lifting: liftingField(units),
    },
    { means: 'the shop' },
  );
}

function liftingField(units: LengthUnits) {
  const of = quantitiesIn(units);
  const length = (means: string) => uncertainField(of('length', { least: 0, most: 1e5 }, means));
  const mass = (means: string, limits: Limits) => uncertainField(of('mass', { ...limits, most: 1e6 }, means));
  const means: z.ZodType<Lifting> = strictMap(
    {
      by: requiredChoiceField(['hand', 'hoist', 'forklift'], 'hand, hoist or forklift'),
      capacity: mass('what it may lift', { above: 0 }),
      hookHeight: length('highest hook above the floor'),
      legs: uncertainField(of('count', { least: 1, most: 8, whole: true }, 'legs of the sling')),
      slingAngle: uncertainField(of('angle', { above: 0, most: 90 }, 'angle of the legs above level')),
      slingHeight: length('height of the sling'),
      rigging: mass('mass of hook block, sling and shackles', { least: 0 }),
      loadCenter: uncertainField(of('length', { above: 0, most: 1e4 }, 'load center of the rating')),
      people: uncertainField(of('count', { least: 1, most: 10, whole: true }, 'people who lift together')),
      reach: length('from the body to the hands'),
      from: length('height of the hands where the lift begins'),
      lift: length('height of the lift'),
    },
    { means: 'a means of lifting' },
  );
  const field = eitherField<'unknown', Lifting[]>(
    { text: choiceField([], 'not known', 'unknown'), list: z.array(means).max(20) },
    {
      means: 'means of lifting; an empty list: none',
      expected: 'expected a list such as [{ by: hand, people: 2 }]',
    },
  );
  return z._default(field, 'unknown');
}

/** Gauge lengths and cutters. */
export function toolsField(units: LengthUnits): z.ZodType<Answers['tools']> {
  const length = (means: string) =>
    uncertainField({ kind: 'length', units, limits: { above: 0, most: 2000 }, means });
  const map = optionalMap(
    {
      shortest: length('shortest tool with its holder, spindle nose to tip'),
      longest: length('longest tool with its holder, spindle nose to tip'),
      largestCutter: length('diameter of the largest cutter'),
    },
    { means: 'tools' },
  );
  return map.superRefine(({ shortest, longest }, context) => {
    if (!surelyLess(longest, shortest)) return;
    report(context, {
      path: ['longest'],
      found: 'is less than the shortest',
      expected: 'expected at least as much',
    });
  });
}

/** How the machine will be used. */
export function workField(units: LengthUnits): z.ZodType<Work> {
  const of = quantitiesIn(units);
  const length = (means: string) => uncertainField(of('length', { above: 0, most: 1e4 }, means));
  return optionalMap(
    {
      threeAxisShare: uncertainField(
        of('share', { least: 0, most: 1 }, 'share of the hours that is three-axis work'),
      ),
      switchesPerWeek: uncertainField(
        of('count', { least: 0, most: 1000 }, 'changes between the two kinds of work'),
      ),
      visesWanted: uncertainField(
        of('count', { least: 0, most: 20, whole: true }, 'vises that should stay on the table'),
      ),
      vise: optionalMap(
        { width: length('width'), length: length('length of the bed'), height: length('height of the bed') },
        { means: 'the vise that is there' },
      ),
      loading: choiceField(LOADINGS, 'how parts are loaded', 'unknown'),
      swap: choiceField(SWAPS, 'how the rotary is put back in place', 'unknown'),
    },
    { means: 'how the machine will be used' },
  );
}

/** Amounts are in the currency of the file. */
export function moneyField(units: LengthUnits): z.ZodType<Money> {
  const of = quantitiesIn(units);
  const amount = (means: string) => uncertainField(of('money', { least: 0, most: 1e9 }, means));
  return optionalMap(
    {
      budget: amount('what all of it may cost'),
      shopRate: amount('what an hour is worth'),
      years: uncertainField(of('years', { above: 0, most: 100 }, 'years to reckon with')),
      interest: uncertainField(of('share', { least: 0, most: 1 }, 'interest a year')),
      rigging: amount('bringing it in and setting it up'),
      training: amount('training and software'),
      yearlyCosts: amount('what it costs every year'),
      residual: amount('what it is worth at the end'),
      plates: amount('a plate under the rotary or the vises, each'),
    },
    { means: 'money, in the currency of the file' },
  );
}

export const controlField = (): z.ZodType<Answers['control']> =>
  optionalMap({ cam: choiceField(CAMS, 'CAM software that is there', 'unknown') }, { means: 'programming' });
