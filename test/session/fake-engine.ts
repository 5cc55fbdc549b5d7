import type { Catalog, Machine, Rotary } from '../../src/catalog/catalog.ts';
import { MATERIALS } from '../../src/mechanics/forces/materials.ts';
import type { Part, Uncertain } from '../../src/questions/answers.ts';
import { assumed } from '../../src/questions/assumptions.ts';
import type { Arrangement, Decision } from '../../src/rules/decision.ts';
import type { Decide } from '../../src/session/world.ts';

/**
 * Stands in for the engine where the conversation is tested, not the rules: an arrangement is left while no part
 * surely swings wider than its rotary, and the cheapest one left is recommended.
 */
export const fakeDecide: Decide = (answers, catalog, { shownIn, all: everyOne }) => {
  const all = catalog.machines.flatMap((machine) => catalog.rotaries.map((rotary) => ({ machine, rotary })));
  const left = all.filter(({ rotary }) =>
    answers.parts.every((part) => widest(part).low <= Number(rotary.swing)),
  );
  const winner = left[0];
  const unknowns = answers.parts
    .filter((part) => part.tolerance === 'unknown')
    .map(({ name }) => ({
      answer: `parts[${name}].tolerance`,
      decides: true,
      ask: 'you',
      checks: ['index-accuracy'],
    }));
  const decision = {
    format: 'fivesides-decision/1',
    inputs: { answers, catalog, assume: assumed(answers.assume), materials: MATERIALS, shownIn },
    outcome: winner === undefined ? 'none' : answers.parts.some((part) => part.must) ? 'open' : 'recommended',
    recommended: winner === undefined ? null : idOf(winner),
    contenders: [],
    nearestMisses: [],
    arrangements: (everyOne === true ? all : left).map((each) => arrangementOf(each, left.includes(each))),
    count: all.length,
    stages: [
      {
        stage: 'envelope',
        before: all.length,
        after: left.length,
        dropped: { swing: all.length - left.length },
      },
    ],
    unknowns,
  };
  return decision as unknown as Decision;
};

const arrangementOf = (each: { machine: Machine; rotary: Rotary }, passes: boolean): Arrangement => {
  const some = {
    id: idOf(each),
    machine: each.machine.id,
    rotary: each.rotary.id,
    passes: passes ? 'yes' : 'no',
    dropped: passes ? null : { stage: 'envelope', check: 'swing' },
    measures: {
      coverage: 1,
      viseStations: 2,
      price: 1000 * Number(each.rotary.swing),
      payback: 4,
      netPresentValue: -100,
      floorArea: 5,
      swapHours: 3,
      margin: 0.1,
    },
  };
  return some as unknown as Arrangement;
};

const idOf = ({ machine, rotary }: { machine: Machine; rotary: Rotary }) =>
  `${machine.id}+${rotary.id}/tilt-along-x`;

function widest(part: Part): { low: number; high: number } {
  const low = (value: Uncertain) => (value === 'unknown' ? 0 : typeof value === 'number' ? value : value[0]);
  const high = (value: Uncertain) =>
    value === 'unknown' ? Infinity : typeof value === 'number' ? value : value[1];
  const [length, width] = part.size;
  if (part.shape === 'round') return { low: low(part.diameter), high: high(part.diameter) };
  return { low: Math.hypot(low(length), low(width)), high: Math.hypot(high(length), high(width)) };
}

const ROOM = { travel: [800, 500, 500], table: null, builtIn: null };

/** Three machines and four rotaries, as far as the fake engine and the questions look at them. */
export const FAKE_CATALOG = {
  format: 'fivesides-catalog/1',
  units: 'mm',
  currency: 'EUR',
  machines: [
    { id: 'rowan', name: 'Rowan', kind: 'mill', ...ROOM },
    { id: 'larch', name: 'Larch', kind: 'convertible', ...ROOM },
    { id: 'yew', name: 'Yew', kind: 'five-axis', ...ROOM },
  ],
  rotaries: [
    { id: 'wren', name: 'Wren', swing: 120 },
    { id: 'robin', name: 'Robin', swing: 180 },
    { id: 'heron', name: 'Heron', swing: 260 },
    { id: 'crane', name: 'Crane', swing: 500 },
  ],
} as unknown as Catalog;
