import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { type ExplainOptions, explainCommand } from '../../src/commands/explain.ts';

async function run(name: string | undefined, options: ExplainOptions = {}) {
  const results: string[] = [];
  const remarks: string[] = [];
  const lines = {
    result: (line: string) => void results.push(line),
    remark: (line: string) => void remarks.push(line),
  };
  const code = await explainCommand(name, options, lines, 90);
  return { code, result: results.join('\n'), remarks };
}

test('without a name everything is listed', async () => {
  const { code, result } = await run(undefined);
  expect(code).toBe(0);
  expect(result).toContain('  reach-high                  The spindle gets high enough above the work');
  expect(result).toContain('ASSUMPTIONS');
});

test('a check, by its name or by its title', async () => {
  const { code, result, remarks } = await run('swing');
  expect(code).toBe(0);
  expect(result).toContain('THE WORK TURNS FREELY');
  expect(result).toContain('2·max(50, 90/2)');
  expect(remarks).toEqual(['See also: fivesides explain term/swing']);
  expect((await run('the work turns freely')).result).toBe(result);
});

test('a word that has the name of a check', async () => {
  const { code, result } = await run('term/swing');
  expect(code).toBe(0);
  expect(result).toContain('a word of the glossary');
});

test.each([
  ['reach-hihg', 'reach-high'],
  ['swign', 'swing'],
  ['brakeSafty', 'brakeSafety'],
])('%s: %s was meant', async (name, meant) => {
  const { code, result, remarks } = await run(name);
  expect(code).toBe(2);
  expect(result).toBe('');
  expect(remarks).toEqual([
    `fivesides: there is nothing called "${name}" (did you mean ${meant}?); fivesides explain lists all.`,
  ]);
});

test('a name that is like none', async () => {
  expect((await run('qqqqqqqq')).remarks[0]).not.toContain('did you mean');
});

test('in inches beside', async () => {
  expect((await run('swing', { units: 'inch' })).result).toContain('60 mm (2.362 in)');
});

test('in plain characters', async () => {
  const { result } = await run('reach-high', { ascii: true });
  expect(result).toMatch(/^[\x20-\x7e\n]+$/);
});

test('Markdown into a file, its sketch beside it', async () => {
  const out = join(mkdtempSync(join(tmpdir(), 'fivesides-explain-')), 'swing.md');
  const { code, remarks } = await run('swing', { out });
  expect(code).toBe(0);
  expect(remarks[0]).toContain('its sketch to swing-figures beside it');
  expect(readFileSync(out, 'utf8')).toContain('(swing-figures/explain-swing.svg)');
  expect(readFileSync(join(out, '..', 'swing-figures', 'explain-swing.svg'), 'utf8')).toContain('<svg');
});

test('Markdown without a file tells the sketch in words', async () => {
  const { result } = await run('payload', { format: 'markdown' });
  expect(result).toContain('## Sketch\n\nNeeded 20 kg, there is 20 kg');
});

test('a file that cannot be written', async () => {
  const { code, remarks } = await run('swing', { out: '/nowhere/at/all/swing.md' });
  expect(code).toBe(2);
  expect(remarks[0]).toContain('was not written');
});
