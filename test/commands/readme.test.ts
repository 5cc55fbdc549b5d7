import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { runProgram } from '../../src/commands/program.ts';

const README = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
const nothing = async (): Promise<number> => 0;
const COMMANDS = {
  interview: nothing,
  decide: nothing,
  catalogCheck: nothing,
  catalogImport: nothing,
  catalogNew: nothing,
  catalogDiff: nothing,
  catalogToCsv: nothing,
  verify: nothing,
  explain: nothing,
  lesson: nothing,
};

async function helpOf(...command: readonly string[]): Promise<string> {
  const printed: string[] = [];
  const usage = { version: '1.2.3', print: (text: string) => printed.push(text), complain: () => undefined };
  expect(await runProgram([...command, '--help'], COMMANDS, usage)).toBe(0);
  return printed.join('');
}

/** The rows of the table in README.md with this head: their first two cells. */
function rowsBelow(head: string): readonly (readonly [first: string, second: string])[] {
  const lines = README.split('\n');
  const start = lines.findIndex((line) => line.startsWith(head));
  expect(start, head).toBeGreaterThan(0);
  const end = lines.findIndex((line, index) => index > start && !line.startsWith('|'));
  return lines.slice(start + 2, end).map((line) => {
    const [, first = '', second = ''] = line.split(/(?<!\\)\|/).map((cell) => cell.trim());
    return [first, second];
  });
}

/** Names of what stands in a section of a help. Example: sectionOf(help, 'Commands') → 'decide', 'catalog', … */
const sectionOf = (help: string, title: string): readonly string[] => {
  const [, section = ''] = help.split(`${title}:\n`);
  return (section.split('\n\n')[0] ?? '')
    .split('\n')
    .flatMap((line) => /^ {2}(\S.*?)(?: {2,}|$)/.exec(line)?.[1] ?? []);
};

const plainName = (line: string): string => line.replace(/ .*/, '');

async function everyCommand(): Promise<readonly string[]> {
  const outer = sectionOf(await helpOf(), 'Commands').map(plainName);
  const inner = sectionOf(await helpOf('catalog'), 'Commands').map((line) => `catalog ${plainName(line)}`);
  return [...outer.filter((name) => name !== 'catalog'), ...inner].filter((name) => !/\bhelp$/.test(name));
}

/** `--out FILE` and `--out <file>` as `--out …`; a switch as it is. */
const option = (written: string): string => written.replace(/^-\w, /, '').replace(/^(--[\w-]+) .+$/s, '$1 …');

test('the table of commands names every command, and no other', async () => {
  const named = rowsBelow('| command |').flatMap(([first]) => {
    const [, words = ''] = /^`fivesides ?([^`]*)`$/.exec(first) ?? [];
    const [name = '', second = ''] = words.split(' ');
    return name === '' ? [] : [name === 'catalog' ? `catalog ${second}` : name];
  });
  expect(new Set(named)).toEqual(new Set(await everyCommand()));
});

test('the table of options says of each which commands have it, as their help does', async () => {
  const inReadme = rowsBelow('| option |').flatMap(([first, of]) =>
    of
      .replace(/ \([^)]*\)/g, '')
      .split(', ')
      .map((command) => `${command}: ${option(first.replaceAll('`', ''))}`),
  );
  const inHelp: string[] = [];
  for (const command of ['interview', ...(await everyCommand())]) {
    const help = await helpOf(...(command === 'interview' ? [] : command.split(' ')));
    const options = sectionOf(help, 'Options').map(option);
    inHelp.push(
      ...options
        .filter((each) => each !== '--help' && each !== '--version')
        .map((each) => `${command}: ${each}`),
    );
  }
  expect(inReadme.toSorted()).toEqual(inHelp.toSorted());
});
