import { blocksPerSecond } from '../../../mechanics/contouring/blocks-per-second.ts';
import { approximateChordLength } from '../../../mechanics/contouring/chord-length.ts';
import { stoppingDistance } from '../../../mechanics/contouring/stopping-distance.ts';
import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import type { Case } from '../../judging/case.ts';
import { type Comparison, defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { falls, type Input, rises, term } from '../../judging/term.ts';
import { orderFeature } from '../../sides/feature.ts';
import { theInput } from '../../sides/single.ts';

/** Five-axis paths are written in steps no longer than this, mm (common practice, no source). */
const LONGEST_STEP = 0.2;

/** Length of one block of the path. */
const step = (of: Case, radius: number, chordError: number): number => {
  const chord = approximateChordLength(radius, chordError);
  return of.part?.motion === 'simultaneous' ? Math.min(chord, LONGEST_STEP) : chord;
};

const path = {
  feed: rises(part.contourFeed),
  radius: falls(part.contourRadius),
  error: falls(part.chordError),
};

const blocks = greatest(['part'], (of) => [
  term('blocks of the path', path, (values) =>
    blocksPerSecond(values.feed, step(of, values.radius, values.error)),
  ),
]);

const blocksAhead = greatest(['part', 'machine'], (of) => [
  term(
    'blocks within the stopping distance',
    { ...path, acceleration: falls(machine.acceleration) },
    (values) => stoppingDistance(values.feed, values.acceleration) / step(of, values.radius, values.error),
  ),
]);

const against = (
  what: string,
  unit: string,
  need: Comparison['need'],
  standard: Input,
  faster: Input,
): Comparison => ({
  what,
  unit,
  need,
  have: theInput(['machine'], standard),
  easings: [orderFeature('look-ahead', 'lookAhead', [{ need, have: theInput(['machine'], faster) }])],
});

const CONTOUR = {
  motion: 'surfaces',
  contour: { feed: 2400, radius: 25, chordError: 0.002 },
} as const;

export const lookAhead = defineCheck({
  id: 'look-ahead',
  stage: 'features',
  about: 'part',
  unit: 'blocks/s',
  sense: 'at-most',
  applies: (of) => of.part?.motion === 'simultaneous' || of.part?.motion === 'surfaces',
  comparisons: [
    against('blocks a second', 'blocks/s', blocks, machine.blocks, machine.blocksLookAhead),
    against('blocks read ahead', 'blocks', blocksAhead, machine.blocksAhead, machine.blocksAheadLookAhead),
  ],
  categorical: true,
  formula:
    'feed/60/step ≤ blocks a second, v²/(2a)/step ≤ blocks read ahead; step = min(√(8·r·chord error), 0.2 mm on five-axis paths)',
  source: 'geometry of the chord; kinematics',
  remedies: ['other-control', 'slower-feed', 'larger-machine'],
  examples: [
    {
      what: '40 mm/s in steps of 0.632 mm',
      given: {
        part: CONTOUR,
        machine: {
          acceleration: 2,
          blocks: {
            standard: 64,
            ahead: 2,
            lookAhead: 1200,
            aheadWithLookAhead: 400,
          },
        },
      },
      verdict: 'holds',
      need: 63.2456,
      have: 64,
    },
    {
      what: 'the same on a slower control that offers look-ahead',
      given: {
        part: CONTOUR,
        machine: {
          acceleration: 2,
          features: { lookAhead: 3900 },
          blocks: {
            standard: 50,
            ahead: 2,
            lookAhead: 1200,
            aheadWithLookAhead: 400,
          },
        },
      },
      verdict: 'holds if',
      need: 63.2456,
      have: 50,
    },
    {
      what: 'and on one that does not',
      given: {
        part: CONTOUR,
        machine: {
          acceleration: 2,
          features: { lookAhead: undefined },
          blocks: { standard: 50, ahead: 2 },
        },
      },
      verdict: 'fails',
      need: 63.2456,
      have: 50,
    },
    {
      what: 'a feed that is not known',
      given: {
        part: { ...CONTOUR, contour: { ...CONTOUR.contour, feed: 'unknown' } },
        machine: { features: { lookAhead: undefined }, blocks: { standard: 100 } },
      },
      verdict: 'open',
    },
  ],
});
