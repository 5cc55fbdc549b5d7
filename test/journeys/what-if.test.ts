import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { blockReplies, SHOP_REPLIES } from '../session/talk.ts';
import { buildProgram, emptyFolder, run } from './interview-program.ts';

let program = '';
beforeAll(async () => {
  program = await buildProgram();
});

const PLAIN = ['--plain', '--ask-all', '--session', 'mine.json'];
/** At the result: one part whose diagonal is 108 mm, so that the smallest rotary holds it. */
const WHOLE = ['mm', 'none', ...blockReplies('Lock gate hinge'), ...SHOP_REPLIES, 'result'];
const said = (text: string): string => text.replace(/\s+/g, ' ');
const saved = (cwd: string) => JSON.parse(readFileSync(join(cwd, 'mine.json'), 'utf8'));

test('another size is tried: what changes, which are dropped by what; then it is dropped', async () => {
  const cwd = emptyFolder();
  const { stdout } = await run(program, {
    args: PLAIN,
    cwd,
    lines: [...WHOLE, 'what if size', '170 x 60 x 55', 'drop', 'no'],
  });
  const text = said(stdout);
  expect(text).toContain('Lock gate hinge: Size: 170 x 60 x 55 mm instead of 90 x 60 x 55 mm');
  expect(text).toContain(
    'Rowan with Heron (tilt axis along X) is recommended instead of Rowan with Wren (tilt axis along X).',
  );
  expect(text).toMatch(/Price 120 000 EUR 260 000 EUR/);
  expect(text).toContain('Of 12 arrangements 6 pass, before 12.');
  expect(text).toContain('- Rowan with Wren (tilt axis along X), by swing');
  expect(text).toContain('- and 1 more');
  const [, afterwards = ''] = text.split('Dropped: every answer is as it was before.');
  expect(afterwards).toContain('You are at the result again; "show" prints it.');
  // nothing of the result is changed, so nothing of it is printed again
  expect(afterwards).not.toContain('is recommended');
  expect(saved(cwd).answers.parts[0].size.value).toEqual([90, 60, 55]);
  expect(saved(cwd).trial).toBeUndefined();
});

test('what is kept is what the interview goes on with', async () => {
  const cwd = emptyFolder();
  const lines = [...WHOLE, 'what if size', '170 x 60 x 55', 'what if budget', '90000', 'keep', 'no'];
  const { code, stdout } = await run(program, { args: PLAIN, cwd, lines });
  expect(code).toBe(0);
  expect(said(stdout).split('Kept: what was tried')[1]).not.toContain('is recommended');
  expect(saved(cwd).answers.parts[0].size.value).toEqual([170, 60, 55]);
  expect(saved(cwd).answers.shop.budget.value).toBe(90000);
});

test('variants stand side by side, outlive the program, and are written', async () => {
  const cwd = emptyFolder();
  const first = [...WHOLE, 'what if size', '170 x 60 x 55', 'name Longer', 'quit'];
  await run(program, { args: PLAIN, cwd, lines: first });
  const again = ['result', 'variants', 'look longer', 'back', 'export variants', '', 'quit'];
  const { stdout } = await run(program, { args: [...PLAIN, '--resume'], cwd, lines: again });
  expect(said(stdout)).toMatch(/Present answers Longer .*Price 120 000 EUR 260 000 EUR/);
  expect(said(stdout)).toContain('This is Longer.');
  const paper = readFileSync(join(cwd, 'fivesides-variants.md'), 'utf8');
  expect(paper).toMatch(/\| Net present value .*-100 EUR/);
  expect(paper.split('\n')[0]).toBe('# Five-axis arrangement: variants side by side');
});

test('who leaves in the middle goes on with what was tried; the exit code is of the answers', async () => {
  const cwd = emptyFolder();
  const lines = [...WHOLE, 'what if size', '900 x 600 x 55', 'quit'];
  const { code, stdout } = await run(program, { args: PLAIN, cwd, lines });
  expect(said(stdout)).toContain('No arrangement passes; before, Rowan with Wren');
  expect(code).toBe(0);
  const back = await run(program, { args: [...PLAIN, '--resume'], cwd, lines: ['drop', 'no'] });
  expect(said(back.stdout)).toContain('900 x 600 x 55 mm instead of 90 x 60 x 55 mm');
  expect(back.code).toBe(0);
  expect(existsSync(join(cwd, 'fivesides-report.md'))).toBe(false);
});
