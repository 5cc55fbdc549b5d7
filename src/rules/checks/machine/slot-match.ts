import { anythingFromZero } from '../../../quantities/interval.ts';
import { caseInput } from '../../inputs/input.ts';
import { machine } from '../../inputs/machine.ts';
import { assume, setting } from '../../inputs/setting.ts';
import type { Case } from '../../judging/case.ts';
import { type Comparison, defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { falls, type Term, term, turnsAt } from '../../judging/term.ts';
import { known, stated } from '../../judging/value.ts';
import { holdOf, holdPath } from '../../sides/hold.ts';
import { theInput } from '../../sides/single.ts';

/** More slots than any table has: beyond it counting on changes nothing. */
const MANY_SLOTS = 40;

const keyWidth = caseInput('width of the keys', 'mm', [6, 40], (of) => {
  const hold = holdOf(of)?.hold;
  return stated(
    hold === undefined || hold === 'unknown' ? 'unknown' : hold.keyWidth,
    holdPath(of, 'keyWidth'),
    anythingFromZero,
    false,
  );
});

const boltPitch = (at: number, pitch: number | 'unknown') =>
  caseInput('pitch of the bolts', 'mm', [30, 400], (of) =>
    pitch === 'unknown'
      ? stated(pitch, holdPath(of, 'pitches'), anythingFromZero, false)
      : known(pitch, holdPath(of, `pitches[${at}]`)),
  );

/** How far bolts at this pitch miss the nearest pair of slots. */
function misfit(bolts: number, slots: number, count: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let k = 1; k <= Math.min(count - 1, MANY_SLOTS); k += 1)
    least = Math.min(least, Math.abs(bolts - k * slots));
  return least;
}

/** Slot pitches at which the misfit turns round: where k spaces fit, and half-way between. */
const turns = (bolts: number): readonly number[] =>
  Array.from({ length: MANY_SLOTS }, (_, k) => [bolts / (k + 1), (2 * bolts) / (2 * k + 3)]).flat();

const spaces = (slots: number): readonly number[] =>
  Array.from({ length: MANY_SLOTS }, (_, k) => [slots * (k + 1), slots * (k + 1.5)]).flat();

const boltTerms = (of: Case): readonly Term[] => {
  const hold = holdOf(of)?.hold;
  const pitches =
    hold === undefined || hold === 'unknown' || hold.pitches === 'unknown'
      ? (['unknown'] as const)
      : hold.pitches;
  return pitches.map((pitch, at) =>
    term(
      pitch === 'unknown' ? 'bolts' : `bolts ${pitch} mm apart`,
      {
        count: falls(machine.slotCount),
        slots: turnsAt(machine.slotPitch, (others) => turns(others.bolts ?? 0)),
        bolts: turnsAt(boltPitch(at, pitch), (others) => spaces(others.slots ?? 0)),
      },
      (values) => misfit(values.bolts, values.slots, values.count),
    ),
  );
};

const adapter = {
  measure: 'adapter-plate',
  all: [
    {
      need: theInput([], assume.plateThickness),
      have: theInput(['plates'], setting.plateThickness),
    },
  ],
  amount: theInput([], assume.plateThickness),
} as const;

const comparison = (what: string, need: Comparison['need']): Comparison => ({
  what,
  need,
  have: theInput([], assume.slotMisfit),
  easings: [adapter],
});

export const slotMatch = defineCheck({
  id: 'slot-match',
  stage: 'fit',
  about: 'arrangement',
  unit: 'mm',
  sense: 'at-most',
  applies: (of) => !of.machine.builtIn,
  comparisons: [
    comparison(
      'keys in the slots',
      greatest(['rotary', 'mounting', 'machine'], () => [
        term(
          'keys',
          {
            key: turnsAt(keyWidth, (others) => [others.slot ?? 0]),
            slot: turnsAt(machine.slotWidth, (others) => [others.key ?? 0]),
          },
          (values) => Math.abs(values.key - values.slot),
        ),
      ]),
    ),
    comparison('bolts over the slots', least(['rotary', 'mounting', 'machine'], boltTerms)),
  ],
  categorical: true,
  formula:
    '|key − slot| and the least |bolt pitch − k·slot pitch|, k < slots ≤ misfit; else an adapter plate',
  source: 'T-slots of ISO 299; common practice, no source',
  remedies: ['adapter-plate', 'other-mounting', 'larger-machine'],
  examples: [
    {
      what: 'keys of 16 mm and bolts 160 mm apart over slots 80 mm apart',
      given: {
        rotary: {
          hold: { 'tilt-along-x': { keyWidth: 16, pitches: [100, 160] } },
        },
        machine: { table: { slots: { count: 5, width: 16, pitch: 80 } } },
        mounting: 'tilt-along-x',
      },
      verdict: 'holds',
      need: 0,
      have: 0.5,
    },
    {
      what: 'bolts 63 mm apart over slots 80 mm apart, with no plate under it',
      given: {
        rotary: { hold: { 'tilt-along-x': { keyWidth: 16, pitches: [63] } } },
        machine: { table: { slots: { count: 5, width: 16, pitch: 80 } } },
        mounting: 'tilt-along-x',
      },
      verdict: 'fails',
      need: 17,
      have: 0.5,
    },
    {
      what: 'the same on an adapter plate',
      given: {
        rotary: { hold: { 'tilt-along-x': { keyWidth: 16, pitches: [63] } } },
        machine: { table: { slots: { count: 5, width: 16, pitch: 80 } } },
        mounting: 'tilt-along-x',
        plates: 30,
      },
      verdict: 'holds if',
      need: 17,
      have: 0.5,
    },
    {
      what: 'a key width that the catalog leaves out',
      given: {
        rotary: {
          hold: { 'tilt-along-x': { keyWidth: 'unknown', pitches: [80] } },
        },
        mounting: 'tilt-along-x',
      },
      verdict: 'open',
    },
  ],
});
