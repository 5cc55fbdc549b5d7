import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { ends, rises, term } from '../../judging/term.ts';
import { isUpright } from '../../sides/base.ts';

/** Up to this tilt a table carries what it carries level; no interpolation beyond. */
const LEVEL_UP_TO = 30;

const carried = greatest(['part'], () => [
  term(
    'part and fixture',
    { m: rises(part.mass), fixture: rises(part.fixtureMass) },
    (of) => of.m + of.fixture,
  ),
]);

const payloads = {
  level: rises(rotary.payloadLevel),
  tilted: rises(rotary.payloadTilted),
};
const carries = least(['part', 'rotary'], (of) => {
  if (isUpright(of))
    return [term('payload, level', { level: rises(rotary.payloadLevel) }, (values) => values.level)];
  // under a level tool the faceplate of a two-axis table stands on edge before it tilts
  if (of.rotary.axes === 1 || of.rotary.gravity !== 'tool')
    return [term('payload, tilted', { tilted: rises(rotary.payloadTilted) }, (values) => values.tilted)];
  return [
    term('payload at this tilt', { ...payloads, tilt: ends(part.tilt) }, (values) =>
      values.tilt <= LEVEL_UP_TO ? values.level : values.tilted,
    ),
  ];
});

export const payload = defineCheck({
  id: 'payload',
  stage: 'envelope',
  about: 'part',
  unit: 'kg',
  sense: 'at-most',
  applies: () => true,
  comparisons: [{ what: 'mass on the table', need: carried, have: carries }],
  formula:
    'fixture + part ≤ payload level (tilt ≤ 30°, and on an upright single axis) or tilted (beyond, and always on a level axis)',
  source: 'common practice, no source',
  remedies: ['larger-rotary', 'lighter-fixture'],
  examples: [
    {
      what: '4 kg of fixture and 16 kg of part on 20 kg',
      given: {
        part: { mass: 16, holding: { mass: 4 } },
        rotary: { payload: { level: 35, tilted: 20 } },
      },
      verdict: 'holds',
      need: 20,
      have: 20,
    },
    {
      what: 'tilted by no more than 30° it carries the level payload',
      given: {
        part: {
          mass: 26,
          holding: { mass: 4 },
          approaches: ['top', { slant: 30 }],
        },
        rotary: { payload: { level: 35, tilted: 20 } },
      },
      verdict: 'holds',
      need: 30,
      have: 35,
    },
    {
      what: 'the same mass on five sides',
      given: {
        part: { mass: 26, holding: { mass: 4 } },
        rotary: { payload: { level: 35, tilted: 20 } },
      },
      verdict: 'fails',
      need: 30,
      have: 20,
    },
    {
      what: 'the same mass on a single axis that stands upright',
      given: {
        part: { mass: 26, holding: { mass: 4 }, approaches: ['around'] },
        rotary: { class: 'single-axis', payload: { level: 35, tilted: 20 } },
        machine: { spindle: 'horizontal' },
      },
      verdict: 'holds',
      need: 30,
      have: 35,
    },
    {
      what: 'under a level tool a table that tilts carries on edge, even at tilt 0',
      given: {
        part: { mass: 26, holding: { mass: 4 }, approaches: ['top'] },
        machine: { spindle: 'horizontal', builtIn: { payload: { level: 35, tilted: 20 } } },
      },
      verdict: 'fails',
      need: 30,
      have: 20,
    },
    {
      what: 'a payload that the catalog leaves out',
      given: {
        part: { mass: 16, holding: { mass: 4 } },
        rotary: { payload: { tilted: 'unknown' } },
      },
      verdict: 'open',
    },
  ],
});
