import { rotarySpeedForContour } from '../../../mechanics/contouring/rotary-speed.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { falls, rises, term } from '../../judging/term.ts';
import { theInput } from '../../sides/single.ts';

const speed = greatest(['part'], () => [
  term('contour', { feed: rises(part.contourFeed), radius: falls(part.contourRadius) }, (of) =>
    rotarySpeedForContour(of.feed, of.radius),
  ),
]);

export const rotarySpeed = defineCheck({
  id: 'rotary-speed',
  stage: 'rotary-class',
  about: 'part',
  unit: 'rev/min',
  sense: 'at-most',
  applies: (of) => of.part?.motion === 'simultaneous',
  comparisons: [
    {
      what: 'turning speed of the contour',
      need: speed,
      have: theInput(['rotary'], rotary.speedRotary),
    },
  ],
  formula: 'contour feed / (2π·contour radius) ≤ speed of the rotary axis',
  source: 'geometry',
  remedies: ['slower-feed', 'larger-rotary'],
  examples: [
    {
      what: '15 708 mm/min at 100 mm is 25 rev/min',
      given: {
        part: {
          motion: 'simultaneous',
          contour: { feed: 15707.963, radius: 100 },
        },
        rotary: { speed: { rotary: 25.01 } },
      },
      verdict: 'holds',
      need: 25,
      have: 25.01,
    },
    {
      what: 'the same feed at half the radius',
      given: {
        part: {
          motion: 'simultaneous',
          contour: { feed: 15707.963, radius: 50 },
        },
        rotary: { speed: { rotary: 25.01 } },
      },
      verdict: 'fails',
      need: 50,
      have: 25.01,
    },
    {
      what: 'a feed that is not known',
      given: {
        part: {
          motion: 'simultaneous',
          contour: { feed: 'unknown', radius: 50 },
        },
        rotary: { speed: { rotary: 25 } },
      },
      verdict: 'open',
    },
  ],
});
