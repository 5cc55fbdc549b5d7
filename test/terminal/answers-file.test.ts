import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DEMO, KEY, PROGRAM, start, type Terminal } from './harness.ts';
import { settled } from './interview.ts';

const LONGEST = 480_000;
/** How long the whole demo shop may take to be decided. */
const DECIDED_MS = 180_000;

/** What `decide` says of the same file, and its exit code. */
function decided(file: string) {
  const { stdout, status } = spawnSync(
    process.execPath,
    [PROGRAM, 'decide', file, '--catalog', DEMO, '--format', 'json'],
    {
      encoding: 'utf8',
      maxBuffer: 100_000_000,
    },
  );
  return { json: stdout, code: status };
}

/** From how to begin into an answers file. */
async function opened(file: string): Promise<Terminal> {
  const terminal = start();
  await terminal.waitFor('Begin a new interview');
  await terminal.press(KEY.down, KEY.enter);
  await terminal.waitFor('Go on from an answers file');
  terminal.send(`${file}\r`);
  await terminal.waitFor(/^Review|question \d/m);
  return terminal;
}

test.each([
  ['shop', 0, 'is recommended'],
  ['shop-nothing-passes', 3, 'No arrangement in this catalog passes'],
  ['shop-many-unknowns', 4, 'It is open'],
] as const)(
  'requirements 19 and 20: %s opened gives what decide gives, byte for byte; it ends with %i, and the result stays',
  { timeout: LONGEST },
  async (name, code, words) => {
    const file = join(DEMO, `${name}.answers.yaml`);
    const terminal = await opened(file);
    terminal.send(KEY.ctrlT);
    await terminal.waitFor('The answer', DECIDED_MS);
    await settled(terminal);
    expect(terminal.text().replaceAll(/\s+/g, ' ')).toContain(words);
    terminal.send('p2\r');
    await terminal.waitFor('Where to?');
    terminal.send('decision.json\r');
    await terminal.waitFor('in decision.json.', DECIDED_MS);
    terminal.send('q');
    expect(await terminal.ended()).toEqual({ code, signal: 0 });
    expect(terminal.modes).toEqual({ alternate: false, cursor: true, paste: false });
    const left = terminal.lines().join(' ').replaceAll(/\s+/g, ' ');
    expect(left).toContain(words);
    expect(left).toContain('Your answers are in');
    const written = readFileSync(join(terminal.cwd, 'decision.json'), 'utf8');
    const wanted = decided(file);
    expect(wanted.code).toBe(code);
    expect(written === wanted.json, 'the decision is the same, byte for byte').toBe(true);
  },
);

test('requirement 19: the key to leave, pressed while the result is worked out, waits for it; a signal does not', {
  timeout: LONGEST,
}, async () => {
  const file = join(DEMO, 'shop-nothing-passes.answers.yaml');
  const [waits, signaled] = await Promise.all([opened(file), opened(file)]);
  for (const terminal of [waits, signaled]) terminal.send(`${KEY.ctrlT}`);
  await signaled.waitFor(/being\s+worked\s+out/);
  signaled.kill('SIGTERM');
  expect(await signaled.ended()).toEqual({ code: 143, signal: 0 });
  expect(signaled.lines().join('\n')).toContain('Your answers are in');
  waits.send('q');
  expect(await waits.ended(DECIDED_MS)).toEqual({ code: 3, signal: 0 });
  expect(waits.lines().join('\n')).toContain('No arrangement in this catalog passes');
});

test('every view of the result has its letter and stands in the list, and each paper is written', {
  timeout: LONGEST,
}, async () => {
  const terminal = await opened(join(DEMO, 'shop-own-mill.answers.yaml'));
  terminal.send(KEY.ctrlT);
  await terminal.waitFor('The answer', DECIDED_MS);
  await settled(terminal);
  for (const [key, title, words] of [
    ['k', 'Which kind of rotary', 'tilting rotary, carried at one'],
    ['x', 'Options to order', 'axis drives'],
    ['b', 'The shop', 'Floor load'],
    ['m', 'Money', 'Paid before the first part'],
    ['d', 'What is given up', 'What is given up against it'],
  ] as const) {
    terminal.send(key);
    expect(await terminal.waitFor(title)).toContain(words);
  }
  terminal.send('v');
  expect(await terminal.waitFor('All views')).toMatch(/m {2}Money +what it costs/);
  await terminal.press('8', KEY.enter);
  await terminal.waitFor('Paid before the first part');
  for (const [digit, file, words] of [
    ['4', 'half.txt', 'IN HALF A PAGE'],
    ['5', 'site.md', '## Site sheet'],
    ['6', 'quotes.md', '## Quote sheets for the sellers'],
  ] as const) {
    terminal.send('p');
    await terminal.waitFor('Each asks where to write');
    await terminal.press(digit, KEY.enter);
    await terminal.waitFor('Where to?');
    terminal.send(`${file}\r`);
    await terminal.waitFor(`in ${file}.`, DECIDED_MS);
    expect(readFileSync(join(terminal.cwd, file), 'utf8')).toContain(words);
  }
});
