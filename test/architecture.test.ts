import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { describe, expect, test } from 'vitest';

/** Who may import whom: a room imports itself and the rooms named here. Imports go down only. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  mechanics: [],
  quantities: [],
  documents: ['quantities'],
  questions: ['documents', 'quantities', 'mechanics'],
  catalog: ['documents', 'quantities', 'mechanics'],
  importing: ['catalog', 'documents', 'quantities'],
  rules: ['questions', 'catalog', 'quantities', 'mechanics'],
  drawing: [],
  report: ['drawing', 'rules', 'questions', 'documents', 'catalog', 'quantities', 'mechanics'],
  verification: ['report', 'rules', 'questions', 'catalog', 'documents', 'quantities', 'mechanics'],
  teaching: ['report', 'drawing', 'rules', 'questions', 'catalog', 'documents', 'quantities', 'mechanics'],
  session: ['rules', 'questions', 'catalog', 'quantities', 'mechanics'],
  ui: [
    'teaching',
    'session',
    'report',
    'rules',
    'questions',
    'catalog',
    'documents',
    'quantities',
    'mechanics',
  ],
  commands: [
    'ui',
    'session',
    'teaching',
    'verification',
    'report',
    'importing',
    'rules',
    'questions',
    'catalog',
    'documents',
    'quantities',
    'mechanics',
  ],
  main: ['commands'],
};

/** Packages and built-ins that a room may reach for; the others reach for none. */
const MAY_REACH: Readonly<Record<string, readonly RegExp[]>> = {
  quantities: [/^fastest-levenshtein$/],
  documents: [/^node:/, /^yaml$/, /^zod$/, /^fastest-levenshtein$/],
  questions: [/^yaml$/, /^zod$/, /^csv-parse\/sync$/],
  catalog: [/^node:/, /^zod$/],
  importing: [/^node:(stream|zlib)/, /^zod$/, /^csv-parse(\/sync)?$/, /^read-excel-file\/node$/],
  drawing: [/^xast/, /^string-width$/, /^wrap-ansi$/],
  report: [/^mdast/, /^yaml$/, /^string-width$/, /^wrap-ansi$/],
  verification: [/^mdast/, /^diff$/],
  teaching: [/^zod$/, /^pure-rand\//],
  session: [/^zod$/, /^fastest-levenshtein$/],
  ui: [/^node:/, /^ink$/, /^ink-select-input$/, /^react$/, /^string-width$/, /^wrap-ansi$/],
  commands: [/^node:/, /^commander$/, /^string-width$/, /^wrap-ansi$/],
  main: [],
};

const MOST_LINES = 250;
const SRC = join(import.meta.dirname, '..', 'src');

interface SourceFile {
  readonly path: string;
  readonly room: string;
  readonly text: string;
}

function filesIn(folder: string): readonly SourceFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => {
      const full = join(entry.parentPath, entry.name);
      const path = relative(SRC, full);
      return {
        path,
        room: path.includes(sep) ? (path.split(sep)[0] as string) : 'main',
        text: readFileSync(full, 'utf8'),
      };
    });
}

interface Import {
  readonly line: number;
  readonly from: string;
}

const IMPORTS =
  /(?:^|\n)\s*(?:import|export)\b[^;'"]*?from\s*['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)/g;

const importsOf = ({ text }: SourceFile): readonly Import[] =>
  [...text.matchAll(IMPORTS)].map((match) => ({
    line: text.slice(0, (match.index ?? 0) + match[0].length).split('\n').length,
    from: (match[1] ?? match[2]) as string,
  }));

const SOURCES = filesIn(SRC);

test('every room of the source has its line in the table', () => {
  expect(SOURCES.length).toBeGreaterThan(50);
  expect([...new Set(SOURCES.map(({ room }) => room))].sort()).toEqual(Object.keys(MAY_IMPORT).sort());
});

describe.each(Object.keys(MAY_IMPORT))('%s', (room) => {
  const files = SOURCES.filter((file) => file.room === room);

  test('imports only the rooms below it', () => {
    const allowed = new Set([room, ...(MAY_IMPORT[room] ?? [])]);
    const wrong = files.flatMap((file) =>
      importsOf(file)
        .filter(({ from }) => from.startsWith('.'))
        .map(({ line, from }) => ({ line, to: relative(SRC, join(dirname(join(SRC, file.path)), from)) }))
        .filter(({ to }) => !allowed.has(to.includes(sep) ? (to.split(sep)[0] as string) : 'main'))
        .map(({ line, to }) => `src/${file.path}:${line} imports ${to}`),
    );
    expect(wrong).toEqual([]);
  });

  test('reaches only for the packages that it may', () => {
    const allowed = MAY_REACH[room] ?? [];
    const wrong = files.flatMap((file) =>
      importsOf(file)
        .filter(({ from }) => !from.startsWith('.') && !allowed.some((pattern) => pattern.test(from)))
        .map(({ line, from }) => `src/${file.path}:${line} reaches for ${from}`),
    );
    expect(wrong).toEqual([]);
  });
});

test('rules know no clock, no chance and no process', () => {
  const wrong = SOURCES.filter(({ room }) => room === 'rules' || room === 'mechanics').flatMap(
    ({ path, text }) =>
      ['Date.', 'new Date', 'Math.random', 'process.', 'performance.', 'console.']
        .filter((word) => text.includes(word))
        .map((word) => `src/${path}: ${word}`),
  );
  expect(wrong).toEqual([]);
});

test(`no source file is longer than ${MOST_LINES} lines`, () => {
  const long = SOURCES.map(({ path, text }) => ({ path, lines: text.split('\n').length - 1 })).filter(
    ({ lines }) => lines > MOST_LINES,
  );
  expect(long).toEqual([]);
});

test('one check a file, named like its id, and in the list', () => {
  const files = SOURCES.filter(({ path }) =>
    /^rules\/checks\/(work|machine|features|shop)\//.test(path.split(sep).join('/')),
  );
  const declared = files.map(({ path, text }) => ({
    file: path.split(sep).at(-1)?.replace('.ts', ''),
    id: /defineCheck\(\{\s*id: '([^']+)'/.exec(text)?.[1],
  }));
  expect(declared.filter(({ file, id }) => file !== id)).toEqual([]);
});
