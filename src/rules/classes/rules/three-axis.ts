import { NOT_SURE } from '../../../questions/ranges.ts';
import { answered, derived, known, openAnswer, type Value } from '../../judging/value.ts';
import { assumed } from '../capacity.ts';
import type { ClassGround } from '../ground.ts';
import { COMMON_PRACTICE, defineGroup, EVERY_CLASS, type Weighed } from '../rule.ts';

/** Share of the work that stays on three axes and has to live with the rotary. */
const share = ({ answers }: ClassGround): Weighed => ({
  value: answered(answers.work.threeAxisShare, 'work.threeAxisShare', NOT_SURE['work.threeAxisShare']),
  parts: [],
});

/** The most vises beside it on any arrangement of the class that may pass; those wanted at the most. */
function vises({ judged, shop }: ClassGround): Weighed | null {
  const all = judged.flatMap(({ passes, measures }) =>
    passes === 'no' || measures.viseStations === null ? [] : [{ passes, stations: measures.viseStations }],
  );
  if (all.length === 0 || !Number.isFinite(shop.visesWanted.low)) return null;
  const most = (sure: boolean, end: 'low' | 'high'): number =>
    Math.max(
      0,
      ...all.filter(({ passes }) => !sure || passes === 'yes').map(({ stations }) => stations[end]),
    );
  const ends = { low: most(true, 'low'), high: most(false, 'high') };
  const from = judged.flatMap(({ passes, own }) =>
    passes === 'open' ? own.flatMap(({ openOn }) => openOn) : [],
  );
  return { value: derived(ends, 'vise stations', from), parts: [] };
}

function wanted({ shop: { visesWanted } }: ClassGround): Value {
  if (visesWanted.low === visesWanted.high) return known(visesWanted.low, 'work.visesWanted');
  return derived(visesWanted, 'work.visesWanted', openAnswer('work.visesWanted'));
}

const OFTEN = { work: { threeAxisShare: 0.4 } } as const;
const SELDOM = { work: { threeAxisShare: 0.1 } } as const;
const TRUNNION = { rotaries: [{ class: 'trunnion' }] } as const;

/** How often three-axis work shares the machine, and what room is left for it. */
export const threeAxis = defineGroup([
  {
    id: 'three-axis-often-light',
    about: ['collet-indexer', 'single-axis', 'single-support'],
    side: 'for',
    unit: 'share',
    number: share,
    limit: assumed('threeAxisOften'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'two fifths of the work stay on three axes',
        of: 'single-support',
        given: OFTEN,
        speaks: 'yes',
        number: 0.4,
        limit: 0.3,
      },
      { what: 'a tenth of it does', of: 'single-support', given: SELDOM, speaks: 'no' },
      {
        what: 'nobody knows how much',
        of: 'single-support',
        given: { work: { threeAxisShare: 'unknown' } },
        speaks: 'open',
      },
    ],
  },
  {
    id: 'three-axis-often-heavy',
    about: ['trunnion', 'built-in'],
    side: 'against',
    unit: 'share',
    number: share,
    limit: assumed('threeAxisOften'),
    when: 'at least',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'two fifths of the work stay on three axes',
        of: 'trunnion',
        given: { ...OFTEN, ...TRUNNION },
        speaks: 'yes',
        number: 0.4,
        limit: 0.3,
      },
      { what: 'a tenth of it does', of: 'trunnion', given: { ...SELDOM, ...TRUNNION }, speaks: 'no' },
    ],
  },
  {
    id: 'three-axis-seldom',
    about: ['trunnion', 'built-in'],
    side: 'for',
    unit: 'share',
    number: share,
    limit: assumed('threeAxisOften'),
    when: 'below',
    source: COMMON_PRACTICE,
    examples: [
      {
        what: 'a tenth of the work stays on three axes',
        of: 'trunnion',
        given: { ...SELDOM, ...TRUNNION },
        speaks: 'yes',
        number: 0.1,
        limit: 0.3,
      },
      { what: 'two fifths of it do', of: 'trunnion', given: { ...OFTEN, ...TRUNNION }, speaks: 'no' },
    ],
  },
  {
    id: 'vises-fit',
    about: EVERY_CLASS,
    side: 'for',
    unit: '',
    number: vises,
    limit: wanted,
    when: 'at least',
    source: 'geometry: lengths left on the table beside the rotary',
    examples: [
      {
        what: 'one vise is wanted, and there is room',
        of: 'single-support',
        given: { parts: [{ tolerance: 0.5 }], work: { visesWanted: 1 } },
        speaks: 'yes',
        number: 2,
        limit: 1,
      },
      {
        what: 'nine are wanted',
        of: 'single-support',
        given: { parts: [{ tolerance: 0.5 }], work: { visesWanted: 9 } },
        speaks: 'no',
      },
    ],
  },
  {
    id: 'vises-missing',
    about: EVERY_CLASS,
    side: 'against',
    unit: '',
    number: vises,
    limit: wanted,
    when: 'below',
    source: 'geometry: lengths left on the table beside the rotary',
    examples: [
      {
        what: 'nine vises are wanted',
        of: 'single-support',
        given: { parts: [{ tolerance: 0.5 }], work: { visesWanted: 9 } },
        speaks: 'yes',
        limit: 9,
      },
      {
        what: 'one is wanted',
        of: 'single-support',
        given: { parts: [{ tolerance: 0.5 }], work: { visesWanted: 1 } },
        speaks: 'no',
      },
    ],
  },
]);
