import type { Catalog } from '../../catalog/catalog.ts';
import type { Flip } from '../decision.ts';
import { runningOf } from '../standing.ts';
import type { Judged } from '../weighing/judged.ts';
import { leversOf } from './levers.ts';
import { type Ground, keysOf, numberAt, withNumber } from './value-at.ts';

/** More than these are not read. */
const MOST = 3;
/** How far from a value a change is looked for, as shares of it: a tenth of it to four times as much. */
const STEPS = { down: [0.9, 0.5, 0.1], up: [1.12, 2, 4] } as const;
/** A change is narrowed down until it is known to this share of the value. */
const FINE = 1e-6;
/** It is then given in as few digits as pass, no farther than this share of the value beyond. */
const ROUND = 1e-4;

/**
 * The smallest changes of one answer, or of one value of the catalog, that would let an arrangement through, smallest
 * share first; every one is decided again. `from` is what it is now, `to` the nearest value with which it passes. None:
 * no single number does it.
 */
export function flipsOf(judged: Judged, ground: Ground): readonly Flip[] {
  if (judged.passes !== 'no') return [];
  const own = { answers: ground.answers, catalog: onlyFor(judged, ground.catalog) };
  const passes = ({ answers, catalog }: Ground): boolean =>
    runningOf(answers, catalog, new Set([judged.id])).running.length > 0;
  return leversOf(judged, own)
    .flatMap((path): readonly Found[] => {
      const keys = keysOf(path, own);
      const from = keys === null ? null : numberAt(own, keys);
      if (keys === null || from === null || from <= 0) return [];
      const at = (value: number): boolean => passes(withNumber(own, keys, value));
      return (['down', 'up'] as const).flatMap((way) => {
        const to = firstThatPasses(from, STEPS[way], at);
        return to === null ? [] : [{ change: path, from, to, share: Math.abs(to - from) / from }];
      });
    })
    .sort((a, b) => a.share - b.share || (a.change < b.change ? -1 : 1))
    .slice(0, MOST)
    .map(({ change, from, to }) => ({ change, from, to }));
}

interface Found extends Flip {
  readonly from: number;
  readonly share: number;
}

/** Outward in steps, then back to where it begins to pass; null: it does nowhere. */
function firstThatPasses(
  from: number,
  steps: readonly number[],
  passesAt: (value: number) => boolean,
): number | null {
  let fails = from;
  for (const step of steps) {
    const passing = from * step;
    if (!passesAt(passing)) {
      fails = passing;
      continue;
    }
    return rounded(narrowed(fails, passing, from * FINE, passesAt), from * ROUND, passesAt);
  }
  return null;
}

/** The value nearest to the one that fails that still passes. */
function narrowed(
  failing: number,
  passing: number,
  fine: number,
  passesAt: (value: number) => boolean,
): number {
  let [fails, passes] = [failing, passing];
  while (Math.abs(passes - fails) > fine) {
    const middle = (fails + passes) / 2;
    if (middle === fails || middle === passes) break;
    if (passesAt(middle)) passes = middle;
    else fails = middle;
  }
  return passes;
}

/** 540.0000004 → 540, where that passes too. */
function rounded(to: number, beyond: number, passesAt: (value: number) => boolean): number {
  for (const digits of [3, 4, 5, 6]) {
    const unit = 10 ** (Math.floor(Math.log10(to)) + 1 - digits);
    for (const round of [Math.round, Math.ceil, Math.floor]) {
      const value = Number((round(to / unit) * unit).toPrecision(12));
      if (Math.abs(value - to) <= beyond && passesAt(value)) return value;
    }
  }
  return to;
}

/** The catalog without what has no part in the arrangement: it is decided on many times. */
function onlyFor({ setUp: { candidate } }: Judged, catalog: Catalog): Catalog {
  const machines = catalog.machines.filter(({ id }) => id === candidate.machine.key);
  const wanted = [candidate.rotary.row?.id, ...machines.map(({ rotaryIncluded }) => rotaryIncluded)];
  return { ...catalog, machines, rotaries: catalog.rotaries.filter(({ id }) => wanted.includes(id)) };
}
