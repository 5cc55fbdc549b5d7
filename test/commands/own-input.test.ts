import { linkSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { decideCommand } from '../../src/commands/decide.ts';
import { folderWith } from '../temporary-folder.ts';

const read = (name: string) => readFileSync(new URL(`../fixtures/${name}`, import.meta.url), 'utf8');

/** A shop of its own, with its answers and its catalog under other names besides. */
function shop() {
  const folder = folderWith({
    'shop.yaml': read('contract.answers.yaml'),
    'catalog/rows.yaml': read('contract.catalog.yaml'),
  });
  const at = (name: string) => join(folder, name);
  symlinkSync(at('shop.yaml'), at('link-to-answers.md'));
  linkSync(at('shop.yaml'), at('second-name-of-answers.md'));
  symlinkSync(at('catalog'), at('link-to-folder'));
  linkSync(at('catalog/rows.yaml'), at('second-name-of-rows.md'));
  return { at, answers: at('shop.yaml'), catalog: at('catalog') };
}

async function writeTo(out: string, { answers, catalog }: ReturnType<typeof shop>) {
  let said = '';
  const remark = (line: string): void => {
    said += `${line}\n`;
  };
  const output = { result: () => {}, columns: 80, remark };
  const code = await decideCommand(answers, { catalog: [catalog], out, format: 'markdown' }, output);
  return { code, said };
}

describe('Writing a decision', () => {
  it.each([
    ['the answers file', 'shop.yaml'],
    ['the answers file by another way to it', 'catalog/../shop.yaml'],
    ['a link to the answers file', 'link-to-answers.md'],
    ['a second name of the answers file', 'second-name-of-answers.md'],
    ['a file of the catalog', 'catalog/rows.yaml'],
    ['a file of the catalog through a link to its folder', 'link-to-folder/rows.yaml'],
    ['a second name of a file of the catalog', 'second-name-of-rows.md'],
  ])('over %s is refused', async (_what, name) => {
    const own = shop();
    const { code, said } = await writeTo(own.at(name), own);
    expect(code).toBe(2);
    expect(said.split('\n')).toHaveLength(2);
    expect(said).toContain('that is read here, and would be replaced; name another file.');
    expect(readFileSync(own.answers, 'utf8')).toBe(read('contract.answers.yaml'));
    expect(readFileSync(own.at('catalog/rows.yaml'), 'utf8')).toBe(read('contract.catalog.yaml'));
  });

  it.each(['new.md', 'catalog/new.md'])('to %s is done, twice too', async (name) => {
    const own = shop();
    expect((await writeTo(own.at(name), own)).code).not.toBe(2);
    expect((await writeTo(own.at(name), own)).code).not.toBe(2);
    expect(readFileSync(own.at(name), 'utf8')).toContain('# Five-axis arrangement');
  });
});
