import { describe, expect, test } from 'vitest';
import { readCommand } from '../../src/commands/plain/command.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import type { Given, Kept } from '../../src/session/kept.ts';
import { givenAt } from '../../src/session/kept.ts';
import { screenOf } from '../../src/session/screen.ts';
import type { Place, Session } from '../../src/session/session.ts';
import { step } from '../../src/session/step.ts';
import { walkOf } from '../../src/session/walk.ts';
import { beginning } from '../../src/ui/state/ui.ts';
import { after, control } from '../ui/pressing.ts';
import { begun, WORLD } from './talk.ts';

const typed = (value: Extract<Given, { value: unknown }>['value']): Given => ({ from: 'typed', value });

/** Answers with which every question applies at once: of a shape that nobody knows both sizes are asked for. */
const KEPT: Kept = {
  shop: { 'lifting-means': typed(['hoist', 'forklift', 'hand']) },
  parts: [
    {
      shape: { from: 'not sure' },
      approaches: typed(['top', 'sides', 'slant', 'undercut']),
      motion: typed('simultaneous'),
      cut: typed('detailed'),
      'contour-cut': typed('detailed'),
      drill: typed(true),
    },
  ],
};

const asked = walkOf(KEPT, WORLD).filter((place) => place.at === 'question');
const standingAt = (at: Place): Session => ({ ...begun().session, kept: KEPT, at });

const PLACES = asked.map((place) => [place.id, place] as const);

test('every question there is applies here', () => {
  expect(asked.map(({ id }) => id).sort()).toEqual(QUESTIONS.map(({ id }) => id).sort());
});

describe.each(PLACES)('requirement 13, not sure: %s', (id, place) => {
  const start = standingAt(place);
  const screen = screenOf(start, WORLD);

  test('says what not sure stands for', () => {
    expect(screen.kind === 'question' ? screen.notSure : '').not.toBe('');
  });

  test('takes not sure line by line', () => {
    const text = screen.kind === 'question' && screen.input.kind === 'text';
    const command = readCommand('not sure', text);
    expect(command.kind).toBe('events');
    const [event] = command.kind === 'events' ? command.events : [];
    const [next] = event === undefined ? [start] : step(start, event, WORLD);
    expect(givenAt(next.kept, place.subject, id)).toEqual({ from: 'not sure' });
    expect(next.note?.kind).toBe('accepted');
  });

  test('takes Ctrl-N on the screen', () => {
    const { session } = after(beginning(start, null), WORLD, control('n'));
    expect(givenAt(session.kept, place.subject, id)).toEqual({ from: 'not sure' });
    expect(session.note?.kind).toBe('accepted');
  });
});
