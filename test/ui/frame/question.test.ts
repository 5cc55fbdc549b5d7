import { describe, expect, test } from 'vitest';
import { screenOf } from '../../../src/session/screen.ts';
import { itemsOf } from '../../../src/ui/state/items.ts';
import { press } from '../../../src/ui/state/press.ts';
import type { Ui } from '../../../src/ui/state/ui.ts';
import { demoUi, demoWorld, textFrame } from '../demo-screens.ts';
import { everyQuestion, everyView, typed } from '../every-screen.ts';
import { after as pressed } from '../pressing.ts';

const world = demoWorld('shop');
const ui = demoUi('shop', world);
const QUESTIONS = everyQuestion(ui, world);
const USUAL = { columns: 80, rows: 24 };
const LEAST = { columns: 60, rows: 20 };
const LEAST_ANSWERS = 5;

/** All rows as one text, however they are broken. */
const flowing = (rows: readonly string[]): string => rows.join(' ').replace(/\s+/g, ' ');

function questionOf(at: Ui) {
  const screen = screenOf(at.session, world);
  if (screen.kind !== 'question') throw new Error(`asked for a question, got ${screen.kind}`);
  return screen;
}
const labelsOf = (at: Ui): readonly string[] => (itemsOf(at, world) ?? []).map(({ label }) => label);
/** Labels of the list that stand at the beginning of a row. */
const inSight = (at: Ui, rows: readonly string[]): readonly string[] =>
  labelsOf(at).filter((label) =>
    rows.some((row) => row.replace(/^(\[.\]|\d\.| {3}) /, '').startsWith(label)),
  );

describe('requirement 1: at 80x24', () => {
  test.each(QUESTIONS)('%s shows the whole question, its answers, progress and keys', (_, at) => {
    const rows = textFrame(at, USUAL, world);
    const { ask, progress } = questionOf(at);
    expect(flowing(rows)).toContain(ask);
    expect(rows[0]).toContain(`question ${progress.number} of ${progress.of}`);
    expect(rows.at(-1)).toContain('? help');
    const all = labelsOf(at);
    expect(inSight(at, rows).length).toBeGreaterThanOrEqual(Math.min(LEAST_ANSWERS, all.length));
    if (all.length === 0) expect(rows.some((row) => row.includes('❯'))).toBe(true);
  });

  test.each(QUESTIONS)('%s tells what the answer before did and what this one would do', (_, at) => {
    const { current, input } = questionOf(at);
    const answering =
      itemsOf(at, world) === null
        ? typed(at, input.kind === 'text' ? 'Bracket' : (current?.words ?? ''))
        : at;
    const text = flowing(textFrame(answering, USUAL, world));
    expect(text).toContain('Before: Material: stainless steel.');
    expect(text).toMatch(/Before: .*arrangements left/);
    expect(text).toMatch(/Enter takes: .+ With it: .*arrangements left|✗ /);
  });
});

describe('requirement 1: at 60x20', () => {
  test.each(QUESTIONS)(
    '%s shows the whole question, its answers and keys, and folds what it does',
    (_, at) => {
      const rows = textFrame(at, LEAST, world);
      expect(flowing(rows)).toContain(questionOf(at).ask);
      expect(rows.filter((row) => row.includes('arrangements left')).length).toBeLessThanOrEqual(1);
      expect(inSight(at, rows).length).toBeGreaterThanOrEqual(Math.min(LEAST_ANSWERS, labelsOf(at).length));
      expect(rows.at(-1)).toContain('? help');
    },
  );

  test('what would be is told on one line', () => {
    const must = QUESTIONS.find(([name]) => name === 'must')?.[1] ?? ui;
    expect(textFrame({ ...must, mark: 0 }, LEAST, world)).toContain(
      'yes: still 20 of 458 arrangements left.',
    );
  });

  test('what the answer before did is told on one line', () => {
    const [, at = ui] = QUESTIONS.find(([name]) => name === 'diameter') ?? [];
    const shown = flowing(textFrame(pressed(at, world, '24.5', '\r'), LEAST, world));
    expect(shown).toMatch(/After Diameter: (still )?\d+ of 458 arrangements left/);
  });

  test('a refusal stays whole: what is accepted is read, not guessed', () => {
    const size = QUESTIONS.find(([name]) => name === 'size')?.[1] ?? ui;
    expect(flowing(textFrame(typed(size, '95 x 60'), LEAST, world))).toContain(
      '✗ That is 2 numbers: type length x width x height, such as 90 x 60 x 55, or "not sure".',
    );
  });
});

test.each([
  [59, 24],
  [80, 19],
  [20, 5],
])('requirement 1: at %i x %i there is one line that asks for a larger window', (columns, rows) => {
  const [first, ...others] = textFrame(ui, { columns, rows }, world);
  expect(first).toMatch(/60.*20/);
  expect(others.every((row) => row === '')).toBe(true);
});

describe('requirement 14: what an answer does', () => {
  test('is told in the frame after the digit, before Enter', () => {
    const at = QUESTIONS.find(([name]) => name === 'diameter')?.[1] ?? ui;
    const before = textFrame(at, USUAL, world);
    expect(flowing(before)).not.toContain('Enter takes');
    const after = textFrame(press(at, { kind: 'text', text: '9' }, world)[0], USUAL, world);
    expect(flowing(after)).toContain('Enter takes: 9 mm');
  });
});

test('requirement 16: what is usual is said to be so, where it is asked and in the review', () => {
  const [, at = ui] = QUESTIONS.find(([name]) => name === 'eccentricity') ?? [];
  const [kept] = at.session.kept.parts;
  const { eccentricity: _, ...others } = kept ?? {};
  const session = { ...at.session, kept: { ...at.session.kept, parts: [others] } };
  const open: Ui = { ...at, session: { ...session, at: { at: 'question', id: 'eccentricity', subject: 0 } } };
  expect(flowing(textFrame(open, USUAL, world))).toContain('Usual answer: centered; Enter keeps it.');
  const review: Ui = { ...open, session: { ...session, at: { at: 'review', part: 0 } } };
  expect(flowing(textFrame(review, { columns: 120, rows: 50 }, world))).toMatch(
    /Off center: centered \(usual answer\) open/,
  );
});

describe('requirement 15: what was refused', () => {
  const [, at = ui] = QUESTIONS.find(([name]) => name === 'diameter') ?? [];

  test('is told until another text is typed, or none', () => {
    const refused = pressed(at, world, '12 quarts', '\r');
    expect(flowing(textFrame(refused, USUAL, world))).toContain('✗ ');
    expect(flowing(textFrame(pressed(refused, world, '\u0015'), USUAL, world))).not.toContain('✗ ');
    expect(flowing(textFrame(pressed(refused, world, '\u0015', '9'), USUAL, world))).not.toContain('✗ ');
  });
});

test('where several rows can be marked, all of them stand in line', () => {
  const [, at = ui] = QUESTIONS.find(([name]) => name === 'approaches') ?? [];
  const rows = textFrame(at, USUAL, world);
  const inLine = labelsOf(at).map((label) =>
    rows.some((row) => row.match(/^(?:\[.\]| {3}) (.*?)(?: {2}|$)/)?.[1] === label),
  );
  expect(inLine).toEqual(Array.from({ length: 6 }, () => true));
});

describe('the answer', () => {
  const [overview = ui] = everyView(ui, world).flatMap(([name, at]) => (name === 'overview' ? [at] : []));
  test('leads with the recommendation, its three tightest checks and what it gives up, on the first 80x24', () => {
    const text = flowing(textFrame(overview, USUAL, world));
    expect(text.match(/needed .+?, there is .+?, margin .+?%\)/g)).toHaveLength(3);
    expect(text.indexOf('is recommended')).toBeLessThan(text.indexOf('needed'));
    expect(text).toContain('It does not hold Kettle manway plate.');
    expect(text).toContain('Against the next best');
  });
  test('has the recommendation and the three checks in sight at 60x20', () => {
    const text = flowing(textFrame(overview, LEAST, world));
    expect(text).toContain('is recommended');
    expect(text.match(/needed .+?, there is .+?, margin .+?%\)/g)).toHaveLength(3);
  });
});
