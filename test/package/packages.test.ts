import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const read = (name: string): string => readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8');

/** Rows of the table of packages: the names in the first cell, and what they are for. */
function listed(): readonly { readonly names: readonly string[]; readonly use: string }[] {
  const section = /\n## Packages\n([\s\S]*?)\n## /.exec(read('DEVELOPERS.md'))?.[1] ?? '';
  return section.split('\n').flatMap((line) => {
    const [, first = '', use = ''] = line.split('|');
    const names = [...first.matchAll(/`([^`]+)`/g)].map(([, name = '']) => name);
    return names.length === 0 || !line.startsWith('|') ? [] : [{ names, use: use.trim() }];
  });
}

const pack: { readonly devDependencies: Readonly<Record<string, string>>; readonly dependencies?: object } =
  JSON.parse(read('package.json'));

test('every package stands in DEVELOPERS.md once, with what it is for, and none that is gone', () => {
  const names = listed().flatMap((each) => each.names);
  expect([...names].sort()).toEqual(Object.keys({ ...pack.devDependencies, ...pack.dependencies }).sort());
  expect(listed().filter(({ use }) => use === '')).toEqual([]);
});

test('every version is exact', () => {
  expect(Object.values(pack.devDependencies).filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual(
    [],
  );
});
