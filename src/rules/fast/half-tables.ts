import type { Case } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { freshMemo, type Memo } from '../judging/memo.ts';
import { unlessBarred } from './barred.ts';
import { addTo, type FamilyBits } from './family-bits.ts';
import { type Half, openGround, openWithPart } from './open-ground.ts';
import { acrossAll, type Three, threeOf } from './verdict-of.ts';

/** What a check says of every row (a stand, or a machine), family by family: sets of families, row after row. */
export interface HalfTable {
  readonly check: Check;
  readonly fails: Uint32Array;
  readonly notSettled: Uint32Array;
}

/** One half in each way that it may stand. */
export interface Grounds {
  readonly anyWay: Case;
  readonly ways: readonly Case[];
}

/**
 * Judges on each half those checks that read nothing of the other half. Which these are is found by trying: the other half
 * may not be read. A check that reads it on one row is left out on all of them. About the arrangement itself: the first
 * family's bit stands for it. Null: a row that nobody looks
 * at. `beside`: what else is worked out on each half, while all of it is at hand.
 */
export function halfTables(
  halves: readonly (Half | null)[],
  checks: readonly Check[],
  bits: FamilyBits,
  beside: (grounds: Grounds, row: number, isMade: (check: Check) => boolean) => void = () => {},
): readonly HalfTable[] {
  const made = new Map(checks.map((check) => [check, emptyTable(check, halves.length, bits)]));
  let first: Memo | null = null;
  halves.forEach((half, row) => {
    if (half === null) return;
    const memo = memoBeside(first);
    first ??= memo;
    const grounds = groundsOf(half, memo);
    for (const [check, table] of made) if (!fillRow(table, row, grounds, bits)) made.delete(check);
    beside(grounds, row, (check) => made.has(check));
  });
  return [...made.values()];
}

const emptyTable = (check: Check, rows: number, { words }: FamilyBits): HalfTable => ({
  check,
  fails: new Uint32Array(rows * words),
  notSettled: new Uint32Array(rows * words),
});

/** What was worked out for parts alone is the same on every half; all else is of one half. */
function memoBeside(first: Memo | null): Memo {
  const memo = freshMemo();
  if (first === null) return memo;
  const ofParts = [...first.sides].filter(([side]) => side.of?.every((room) => room === 'part') === true);
  return { ...memo, sides: new Map(ofParts), ids: first.ids };
}

/** The same memo serves all ways round: which way it stands is part of its keys. */
function groundsOf(half: Half, memo: Memo): Grounds {
  if (half.stand === 'barred') {
    const only = openGround({ ...half, turned: 'barred' }, memo);
    return { anyWay: only, ways: [only] };
  }
  return {
    anyWay: openGround({ ...half, turned: 'barred' }, memo),
    ways: [false, true].map((turned) => openGround({ ...half, turned }, memo)),
  };
}

function fillRow(table: HalfTable, row: number, grounds: Grounds, bits: FamilyBits): boolean {
  const { check } = table;
  const from = row * bits.words;
  const note = (three: Three | null, index: number): boolean => {
    if (three === 'fails') addTo(table.fails, from, index);
    if (three === 'not settled') addTo(table.notSettled, from, index);
    return three !== null;
  };
  if (check.about === 'arrangement') return note(onGrounds(check, grounds, [null]), 0);
  return bits.families.every(({ cases }, index) => note(onGrounds(check, grounds, cases), index));
}

/** Over all kinds of a part, and both ways round where the check asks for it; null: it reads what may not be read. */
function onGrounds(
  check: Check,
  { anyWay, ways }: Grounds,
  parts: readonly (FamilyBits['families'][number]['cases'][number] | null)[],
): Three | null {
  const on = (grounds: readonly Case[]): Three | null =>
    unlessBarred(() =>
      acrossAll(
        grounds.flatMap((ground) =>
          parts.map((part) => threeOf(check, part === null ? ground : openWithPart(ground, part))),
        ),
      ),
    );
  return on([anyWay]) ?? (ways.length > 1 ? on(ways) : null);
}
