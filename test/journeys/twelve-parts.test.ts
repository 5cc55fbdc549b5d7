import { expect, test } from 'vitest';
import { decide } from '../../src/rules/decide.ts';
import { screenOf } from '../../src/session/screen.ts';
import type { Event, Session } from '../../src/session/session.ts';
import { newSession } from '../../src/session/start.ts';
import { step } from '../../src/session/step.ts';
import { createWorld, type World } from '../../src/session/world.ts';
import { demoCatalog } from '../catalog-demo/demo.ts';
import { TWELVE_PARTS } from './twelve-parts.ts';

/** Nothing is worked out between two answers: where each question is gone to by its title, it hangs on nothing. */
const world: World = { ...createWorld(demoCatalog(), decide), asking: () => 'later' };

function after(session: Session, ...events: readonly (Event | string)[]): Session {
  let now = session;
  for (const each of events) {
    [now] = step(now, typeof each === 'string' ? { type: 'reply', text: each } : each, world);
    expect(now.note?.kind, JSON.stringify([each, now.note])).not.toBe('error');
  }
  return now;
}

/** What is typed after the table: the questions that the program asks of these parts, and their answers. */
const SHOP: readonly (readonly [title: string, reply: string])[] = [
  ['ceiling', '3600'],
  ['doorway width', '2600'],
  ['doorway height', '2900'],
  ['free power', '40'],
  ['room for the machine', '4600 x 4400'],
  ['floor rating', 'not sure'],
  ['largest cutter', '20'],
  ['budget', '172000'],
  ['longest tool', '190'],
  ['vises beside it', '2'],
  ['changes a week', '3'],
  ['means of lifting', 'not sure'],
  ['compressed air', '300'],
  ['air pressure', '7'],
  ['what matters', 'not sure'],
];

test('requirement 15: twelve parts pasted from a spreadsheet, two mistakes mended, fifteen answers: one arrangement is recommended', () => {
  const start = after(newSession(world, [], null), 'mm', 'none', { type: 'table', text: TWELVE_PARTS });
  const screen = screenOf(start, world);
  expect(screen.kind === 'parts' && screen.parts).toHaveLength(12);
  expect(screen.said).toContain('2 faults: Gland nut, Material; Fairlead, Height (mm).');
  expect(screen.more).toEqual([
    expect.stringMatching(/^Row 7 \(Gland nut\), Material: "bronze-ish" is none of them: .*brass, plastic/),
    expect.stringMatching(
      /^Row 9 \(Fairlead\), Height \(mm\): "lb" is no unit of length.*whole size is left open/,
    ),
  ]);
  const { items } = world.survey(start.kept);
  const given = items.filter(({ subject, given: answer }) => subject !== null && answer !== undefined);
  expect(given.length).toBeGreaterThan(250);
  const mended = after(
    start,
    { type: 'find', text: 'gland nut material' },
    'brass',
    { type: 'find', text: 'fairlead size' },
    '130 x 80 x 58',
  );
  const { parts } = world.survey(mended.kept).answers;
  expect(parts.map(({ name }) => name).slice(0, 3)).toEqual(['Rudder hinge', 'Cleat base', 'Valve spindle']);
  expect(parts[1]).toMatchObject({ size: [101.6, 63.5, 38.1] });
  expect(parts[5]).toMatchObject({ diameter: 60.325, material: 'brass' });
  const told = SHOP.reduce(
    (session, [title, reply]) => after(session, { type: 'find', text: title }, reply),
    mended,
  );
  const decision = world.decision(told.kept);
  expect(decision?.outcome).toBe('recommended');
  expect(decision?.recommended).not.toBeNull();
}, 480_000);
