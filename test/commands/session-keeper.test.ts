import { existsSync, mkdirSync, readdirSync, readFileSync, rmdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { SessionKeeper } from '../../src/commands/session-keeper.ts';
import type { Saved } from '../../src/session/saved.ts';
import { folderWith } from '../temporary-folder.ts';

let folder = '';
beforeEach(() => {
  folder = folderWith({});
});
const at = (name: string): string => join(folder, name);
const begun = (known: string | null = null): SessionKeeper => new SessionKeeper(at('kept.json'), known);

/** An interview that differs from another one by its machine. */
const keptWith = (mill: string): Saved => ({
  format: 'fivesides-session/1',
  catalogs: [],
  position: { at: 'parts' },
  asks: 'all',
  answers: { shop: { 'own-mill': { from: 'typed', value: mill } }, parts: [] },
});
const millIn = (name: string): string =>
  JSON.parse(readFileSync(at(name), 'utf8')).answers.shop['own-mill'].value;

describe('one run', () => {
  test('replaces what it wrote itself, and what it began from', () => {
    writeFileSync(at('kept.json'), 'as it was read');
    const keeper = begun('as it was read');
    expect([keeper.save(keptWith('alder')), keeper.save(keptWith('oak')), keeper.settle()]).toEqual([
      null,
      null,
      null,
    ]);
    expect(millIn('kept.json')).toBe('oak');
    expect(readdirSync(folder)).toEqual(['kept.json']);
  });

  test('writes its file again where somebody has taken it away', () => {
    const keeper = begun();
    keeper.save(keptWith('alder'));
    rmSync(at('kept.json'));
    expect(keeper.settle()).toBeNull();
    expect(millIn('kept.json')).toBe('alder');
  });

  test('has nothing to settle where it saved nothing', () => {
    expect(begun().settle()).toBeNull();
    expect(readdirSync(folder)).toEqual([]);
  });

  test('what could not be saved is told, and saved in the end where that can be', () => {
    mkdirSync(at('kept.json'));
    const keeper = begun();
    const told = `The interview could not be saved to ${at('kept.json')}: that is a folder.`;
    expect(keeper.save(keptWith('alder'))).toBe(told);
    expect([keeper.unsaved, keeper.settle(), keeper.unsaved]).toEqual([told, told, told]);
    rmdirSync(at('kept.json'));
    expect([keeper.settle(), keeper.unsaved]).toEqual([null, null]);
    expect(millIn('kept.json')).toBe('alder');
  });
});

describe('two runs on one file', () => {
  test('the second finds what the first wrote, leaves it, and goes on beside it', () => {
    const [first, second] = [begun(), begun()];
    first.save(keptWith('alder'));
    const told = second.save(keptWith('oak'));
    expect(told).toBe(
      `Another run has written to ${at('kept.json')} meanwhile, and that stays; this one is kept in ${at('kept-2.json')}.`,
    );
    expect([second.file, second.moved, second.unsaved]).toEqual([at('kept-2.json'), told, null]);
    expect([first.save(keptWith('ash')), second.save(keptWith('elm')), second.moved]).toEqual([
      null,
      null,
      null,
    ]);
    expect([millIn('kept.json'), millIn('kept-2.json')]).toEqual(['ash', 'elm']);
  });

  test('the third takes the next name that is free', () => {
    const runs = [begun(), begun(), begun()];
    for (const [index, mill] of ['alder', 'oak', 'ash'].entries()) runs[index]?.save(keptWith(mill));
    expect(readdirSync(folder).map(millIn)).toEqual(['oak', 'ash', 'alder']);
  });

  test('whoever was written over in the moment of saving is there in the end', () => {
    const slow = begun();
    slow.save(keptWith('alder'));
    // another run read the file just before, and wrote just after
    writeFileSync(at('kept.json'), 'of another run');
    expect(slow.settle()).toContain('kept-2.json');
    expect(millIn('kept-2.json')).toBe('alder');
    expect(readFileSync(at('kept.json'), 'utf8')).toBe('of another run');
  });

  test('where both say the same nobody moves', () => {
    const [first, second] = [begun(), begun()];
    expect([first.save(keptWith('alder')), second.save(keptWith('alder'))]).toEqual([null, null]);
    expect(existsSync(at('kept-2.json'))).toBe(false);
  });
});
