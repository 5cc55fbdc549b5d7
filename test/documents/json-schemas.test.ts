import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import * as z from 'zod';
import { schemaTexts } from '../../scripts/schemas.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const shipped = (name: string) => readFileSync(join(ROOT, 'schemas', name), 'utf8');
const fixture = (name: string): unknown => parse(readFileSync(join(ROOT, 'test', 'fixtures', name), 'utf8'));

/** A second reader: the shipped JSON Schema itself, turned back into a checker. */
const checkerOf = (name: string) => z.fromJSONSchema(JSON.parse(shipped(name)));

describe.each(Object.entries(schemaTexts()))('%s', (name, text) => {
  test('is what the program reads; run "npm run schemas" after a change', () => {
    expect(shipped(name)).toBe(text);
  });

  test('says of every key what it means', () => {
    const silent: string[] = [];
    const look = (schema: unknown, path: string): void => {
      if (typeof schema !== 'object' || schema === null) return;
      for (const [key, inner] of Object.entries('properties' in schema ? (schema.properties ?? {}) : {})) {
        const { description, items } = { description: undefined, items: undefined, ...inner };
        if (description === undefined && items === undefined) silent.push(`${path}.${key}`);
        look(inner, `${path}.${key}`);
      }
      if ('items' in schema) look(schema.items, `${path}[]`);
      if ('anyOf' in schema && Array.isArray(schema.anyOf)) for (const each of schema.anyOf) look(each, path);
    };
    look(JSON.parse(text), '');
    expect(silent).toEqual([]);
  });
});

describe('editors take what the contract shows, and nothing else', () => {
  test.each([
    ['answers.schema.json', 'contract.answers.yaml'],
    ['catalog.schema.json', 'contract.catalog.yaml'],
  ])('%s takes %s', (schema, example) => {
    const result = checkerOf(schema).safeParse(fixture(example));
    expect(result.error?.issues ?? []).toEqual([]);
  });

  test('a key that is not there, and a word that is none', () => {
    const example = { ...(fixture('contract.answers.yaml') as object) };
    expect(checkerOf('answers.schema.json').safeParse({ ...example, unit: 'mm' }).success).toBe(false);
    expect(checkerOf('answers.schema.json').safeParse({ ...example, units: 'cm' }).success).toBe(false);
    expect(checkerOf('answers.schema.json').safeParse({ ...example, parts: [] }).success).toBe(false);
  });
});
