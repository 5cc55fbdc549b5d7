import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHECKS } from '../../src/rules/checks/index.ts';
import type { Check } from '../../src/rules/judging/check.ts';
import type { Term, Use } from '../../src/rules/judging/term.ts';
import { exampleWorld } from '../rules/example-shop.ts';
import { anyPart, anySetting, anyStand } from './random-shop.ts';
import { termsOf } from './terms-of.ts';

const RUNS = { numRuns: 60, seed: 20260101 };
/** Where the formula's own rounding may show: relative to the size of its values. */
const NOISE = 1e-9;

const world = fc.record({
  part: anyPart,
  stand: anyStand,
  setting: anySetting,
  seed: fc.integer({ min: 1, max: 2 ** 31 - 2 }),
});

/** Drawn evenly from 0 to 1, sometimes an end itself: fast-check's own numbers crowd at the ends. */
function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    const at = state / 2147483647;
    return at < 0.1 ? 0 : at > 0.95 ? 1 : at;
  };
}

/** A value of the input's own domain. */
const drawn = ({ input: { domain } }: Use, at: number): number => domain[0] + (domain[1] - domain[0]) * at;

/** The formula at rising values of one input while the others stand still. */
function along(
  term: Term,
  key: string,
  others: Record<string, number>,
  from: readonly number[],
): readonly number[] {
  return from.map((value) => term.formula({ ...others, [key]: value }));
}

const above = (a: number, b: number): boolean => a > b + NOISE * Math.max(1, Math.abs(a), Math.abs(b));

function complaint(
  term: Term,
  key: string,
  use: Use,
  others: Record<string, number>,
  values: readonly number[],
): string | null {
  const found = along(term, key, others, values);
  const said = `${term.name}: ${use.input.name} at ${values} gives ${found}`;
  const first = found[0] as number;
  const last = found.at(-1) as number;
  for (let index = 1; index < found.length; index += 1) {
    const [before, after] = [found[index - 1] as number, found[index] as number];
    if (use.direction === 'rises' && above(before, after)) return `${said}, and is said to rise`;
    if (use.direction === 'falls' && above(after, before)) return `${said}, and is said to fall`;
  }
  const inner = found.slice(1, -1);
  if (use.direction === 'ends') {
    if (inner.some((each) => above(each, Math.max(first, last)) || above(Math.min(first, last), each)))
      return `${said}, and its extremes are said to lie at the ends`;
  }
  if (typeof use.direction === 'function') {
    const [low, high] = [values[0] as number, values.at(-1) as number];
    const points = use.direction(others).filter((point) => point > low && point < high);
    const known = [first, last, ...along(term, key, others, points)];
    if (inner.some((each) => above(each, Math.max(...known)) || above(Math.min(...known), each)))
      return `${said}, beyond its ends and the extreme points ${points}`;
  }
  return null;
}

describe.each(CHECKS.map((check): [string, Check] => [check.id, check]))('%s', (_id, check) => {
  test('every input of every term moves it as declared', () => {
    let seen = 0;
    const moved = new Set<string>();
    const inputs = new Set<string>();
    fc.assert(
      fc.property(world, ({ part, stand, setting, seed }) => {
        const next = uniform(seed);
        const { cases } = exampleWorld({
          part,
          ...stand,
          ...setting,
        });
        for (const of of cases.filter((each) => check.applies(each))) {
          for (const term of termsOf(check, of)) {
            seen += 1;
            const others = Object.fromEntries(
              Object.entries(term.uses).map(([key, use]) => [key, drawn(use, next())]),
            );
            for (const [key, use] of Object.entries(term.uses)) {
              const values = [next(), next(), next(), next(), next()]
                .sort((a, b) => a - b)
                .map((at) => drawn(use, at));
              inputs.add(use.input.name);
              if (new Set(along(term, key, others, values)).size > 1) moved.add(use.input.name);
              expect(complaint(term, key, use, others, values)).toBeNull();
            }
          }
        }
      }),
      RUNS,
    );
    expect(seen).toBeGreaterThan(0);
    const fixedNames = [...inputs].filter((name) => !moved.has(name));
    const canMove = fixedNames.filter((name) => !isFixed(check, name));
    expect(canMove, 'declared, but moves nothing').toEqual([]);
  });
});

/** A yes or no has no range to move in. */
function isFixed(check: Check, name: string): boolean {
  const worlds = check.examples.flatMap((example) => exampleWorld(example.given).cases);
  const uses = worlds.flatMap((of) => termsOf(check, of)).flatMap((term) => Object.values(term.uses));
  return uses
    .filter((use) => use.input.name === name)
    .every((use) => use.input.domain[0] === use.input.domain[1]);
}
