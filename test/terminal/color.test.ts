import { expect, test } from 'vitest';
import { KEY, type Terminal } from './harness.ts';
import { answered, begun, HINGE, settled, smallCatalog, turnsOf, undecided, until } from './interview.ts';

const catalog = smallCatalog();
const TURNS = turnsOf(HINGE, undecided(catalog));

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const LOOKS = /\u001b\[([\d;:]*)m/g;
const isColor = (code: number): boolean =>
  (code >= 30 && code <= 49) || (code >= 90 && code <= 107) || code === 58;

/** The codes that set or reset a color, in the order in which they came. */
const colorsIn = (raw: string): readonly number[] =>
  [...raw.matchAll(LOOKS)].flatMap(([, codes = '']) => codes.split(/[;:]/).map(Number).filter(isColor));

test.each([
  ['NO_COLOR=1', { env: { NO_COLOR: '1' } }, false],
  ['FORCE_COLOR=0', { env: { FORCE_COLOR: '0' } }, false],
  ['FORCE_COLOR=1', { env: { FORCE_COLOR: '1' } }, true],
  ['FORCE_COLOR=1 before NO_COLOR=1', { env: { FORCE_COLOR: '1', NO_COLOR: '1' } }, true],
  ['--color never before FORCE_COLOR=1', { args: ['--color', 'never'], env: { FORCE_COLOR: '1' } }, false],
  ['--color always before NO_COLOR=1', { args: ['--color', 'always'], env: { NO_COLOR: '1' } }, true],
  ['nothing said', {}, true],
] as const)('requirement 22: %s: colors as it says', async (_, options, hasColor) => {
  const terminal = await begun({ catalog, ...options });
  await answered(terminal, until(TURNS, 'size'));
  await terminal.waitFor('How large is Hinge?');
  await terminal.press('12 quarts');
  await terminal.waitFor('✗ ');
  const colors = colorsIn(terminal.raw);
  if (hasColor) expect(colors.length).toBeGreaterThan(0);
  else expect(colors).toEqual([]);
  // the sixteen of the user's own theme
  expect(colors.filter((code) => code === 38 || code === 48)).toEqual([]);
});

test('requirement 22: without any color the verdicts, the selection and the faults are words and signs still', async () => {
  const [colored, bare] = await Promise.all(
    ['1', '0'].map((FORCE_COLOR) => begun({ catalog, env: { FORCE_COLOR } })),
  );
  if (colored === undefined || bare === undefined) throw new Error('there are two');
  /** What both show is the same; the cells hold no looks. */
  const both = async (work: (terminal: Terminal) => Promise<unknown>): Promise<string> => {
    await Promise.all([colored, bare].map(work));
    await Promise.all([colored, bare].map((each) => settled(each)));
    const [first, second] = [colored, bare].map((each) =>
      each.text().replaceAll(each.cwd, '').replace(/▏$/m, ''),
    );
    expect(second).toBe(first);
    return first ?? '';
  };
  const question = await both(async (terminal) => {
    await answered(terminal, until(TURNS, 'size'));
    await terminal.waitFor('How large is Hinge?');
    await terminal.press('12 quarts\r');
    await terminal.waitFor('✗ ');
  });
  expect(question).toMatch(/❯ 12 quarts/);
  expect(question).toMatch(/^✗ That is one number/m);
  const choice = await both(async (terminal) => {
    await terminal.press(KEY.ctrlU);
    terminal.send('90 x 60 x 55\r');
    await terminal.waitFor('What is Hinge made of?');
  });
  expect(choice.match(/^❯ /gm)).toHaveLength(1);
  const answer = await both(async (terminal) => {
    terminal.send(KEY.ctrlT);
    await terminal.waitFor('The answer');
  });
  expect(answer).toMatch(/It is open|is recommended|No arrangement/);
  const why = await both(async (terminal) => {
    await terminal.press('w');
    await terminal.waitFor('Every check');
  });
  expect(why).toMatch(/ (\? open|~ holds if|✓ holds) /);
  const fails = await both(async (terminal) => {
    await terminal.press('n');
    await terminal.waitFor('Why not another one');
    await settled(terminal);
    await terminal.press('\r');
    await terminal.waitFor('✗ fails');
  });
  expect(fails).toMatch(/✗ fails: needed/);
  expect(colorsIn(bare.raw)).toEqual([]);
  expect(colorsIn(colored.raw)).toContain(31);
  expect(colorsIn(colored.raw)).toContain(36);
});
