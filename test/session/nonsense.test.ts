import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCommand } from '../../src/commands/plain/command.ts';
import { cleaned } from '../../src/commands/plain/typed-lines.ts';
import type { Kept } from '../../src/session/kept.ts';
import { readSaved, savedOf } from '../../src/session/saved.ts';
import { screenOf } from '../../src/session/screen.ts';
import type { Session } from '../../src/session/session.ts';
import { step } from '../../src/session/step.ts';
import { begun, blockReplies, go, oneBlock, WORLD } from './talk.ts';

const WORDS = [
  ...[
    '',
    'back',
    'review',
    'result',
    'parts',
    'parts add',
    'parts copy 1',
    'parts remove 1',
    'yes',
    'no',
    'not sure',
    'go on',
  ],
  ...[
    'goto 5',
    'goto 999',
    'goto size',
    'goto',
    'add',
    'edit 1',
    'rename 1',
    'remove 2',
    'save',
    'export',
    'save x.yaml',
    'why',
  ],
  ...[
    '1',
    '2',
    '1, 3',
    '0',
    '-1',
    '30',
    '3 1/2 in',
    '1,500',
    '1e309',
    '90 x 60 x 55',
    '2 x x 3',
    '20 to 10',
    '10 to 20',
  ],
  ...[
    'block',
    'round',
    'top',
    'sides',
    'detailed',
    'simultaneous',
    'fixture',
    'brass',
    'Hinge',
    'Valve body',
    '"back"',
  ],
  ...[
    '__proto__',
    'constructor',
    'toString',
    '\u001b[2J',
    '\u202eabc',
    '💥💥',
    'ｗｉｄｅ',
    '|`<b>',
    '%s%n',
    '../../etc',
    'x'.repeat(3000),
  ],
];
const line = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...WORDS) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 30 }) },
  { weight: 1, arbitrary: fc.double().map(String) },
);

/** One line as the line shell takes it, files left out. */
function typed(session: Session, text: string): Session {
  const screen = screenOf(session, WORLD);
  const command = readCommand(cleaned(text), screen.kind === 'question' && screen.input.kind === 'text');
  if (command.kind !== 'events') return session;
  return command.events.reduce((now, event) => step(now, event, WORLD)[0], session);
}

/** Answers that were there and are gone or another one, as `part/id`. */
function lost(before: Kept, after: Kept): readonly string[] {
  const missing = (from: Kept['shop'], to: Kept['shop'] | undefined, name: string) =>
    Object.keys(from).flatMap((id) =>
      JSON.stringify(from[id]) === JSON.stringify(to?.[id]) ? [] : [`${name}/${id}`],
    );
  return [
    ...missing(before.shop, after.shop, 'shop'),
    ...before.parts.flatMap((part, index) => missing(part, after.parts[index], String(index))),
  ];
}

describe.each([
  ['from the beginning', begun()],
  ['from two parts on', go(begun(), 'mm', 'none', ...blockReplies('A'), 'add', ...blockReplies('B'))],
  ['from the review', oneBlock()],
] as const)('500 lines of nonsense %s', (_, start) => {
  test('lose no answer that was taken, except where a part is taken out or an answer is replaced', () => {
    const lines = fc.sample(line, { numRuns: 500, seed: 20 });
    let session = start.session;
    for (const text of lines) {
      const before = session;
      session = typed(before, text);
      if (before.at.at === 'remove' && session.kept.parts.length < before.kept.parts.length) continue;
      const { note } = session;
      const replaced = note?.kind === 'accepted' ? `${note.subject ?? 'shop'}/${note.id}` : '';
      expect(
        lost(before.kept, session.kept).filter((each) => each !== replaced),
        JSON.stringify(text),
      ).toEqual([]);
    }
    expect(readSaved(JSON.stringify(savedOf(session)))).toMatchObject({
      ok: true,
      saved: { answers: session.kept },
    });
  });
});

test('300 random walks of 40 lines never throw, and always have something to show', () => {
  fc.assert(
    fc.property(fc.array(line, { minLength: 1, maxLength: 40 }), (lines) => {
      const last = lines.reduce((session, text) => typed(session, text), begun().session);
      const screen = screenOf(last, WORLD);
      expect(screen.kind).toBeTypeOf('string');
      expect(JSON.stringify(screen)).not.toContain('undefined');
    }),
    { numRuns: 300, seed: 21 },
  );
});

test.each([
  ['\u001b[A\u001b[Bblock', 'block'],
  ['\u001b[200~12,5 mm\u001b[201~', '12,5 mm'],
  ['\u001b]0;title\u0007round', 'round'],
  ['a\tb', 'a b'],
  ['a\u0000\u0008b', 'ab'],
  ['\u202egnorw', '\\u{202e}gnorw'],
])('of %j only %j reaches the interview', (text, expected) => expect(cleaned(text)).toBe(expected));
