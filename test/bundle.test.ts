import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { describe, expect, it } from 'vitest';

const root = new URL('..', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, root), 'utf8');

/** Needs a built program: `npm test` builds it first. */
describe('The program as it is packed', () => {
  const pack = JSON.parse(read('package.json')) as Readonly<Record<string, Readonly<Record<string, string>>>>;

  it('needs no package when it runs', () => {
    expect(pack.dependencies).toBeUndefined();
    const asked = readdirSync(new URL('dist/', root))
      .filter((name) => name.endsWith('.js'))
      .flatMap((name) => [
        ...read(`dist/${name}`).matchAll(/\b(?:from|import)\s*\(?\s*["']([@\w][\w@/:.-]*)["']/g),
      ])
      .map(([, name = '']) => name.replace(/^node:/, ''));
    expect(asked.length).toBeGreaterThan(0);
    expect([...new Set(asked)].filter((name) => !builtinModules.includes(name))).toEqual([]);
  });

  it('names the packages that are in it, with their licenses', () => {
    const notices = read('dist/THIRD-PARTY.txt');
    for (const name of ['commander', 'ink', 'react', 'yaml', 'yoga-layout', 'zod']) {
      expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+, (MIT|ISC)$`, 'm'));
    }
    expect(notices).toContain('Permission is hereby granted');
    expect(notices).not.toMatch(/^(vitest|typescript|esbuild) /m);
  });

  it('holds the documents that the README leads to', () => {
    const files = JSON.stringify(pack.files);
    for (const [, file = ''] of read('README.md').matchAll(/\]\((?!http)([\w.-]+)\)/g))
      expect(files).toContain(`"${file}"`);
  });
});
