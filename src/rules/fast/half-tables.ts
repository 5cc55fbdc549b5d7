import type { Case } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { unlessBarred } from './barred.ts';
import { addTo, type FamilyBits } from './family-bits.ts';
import { FAILS, type FlatJudge, flatJudge, isFlat, NOT_SETTLED } from './flat-judge.ts';
import { casesFor, type Flats } from './flats.ts';
import { type Half, openGround } from './open-ground.ts';

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

interface InWork extends HalfTable {
  readonly judge: FlatJudge;
  /** some row was asked which way round it stands */
  asksWay: boolean;
}

/**
 * Judges on each half those checks that read nothing of the other half. Which these are is found by trying: the other half
 * may not be read. A check that reads it on one row is left out on all of them. About the arrangement itself: the first
 * family's bit stands for it. Null: a row that nobody looks at. `beside`: what else is worked out on each half, while it is
 * at hand.
 */
export const halfTables = (
  halves: readonly (Half | null)[],
  checks: readonly Check[],
  flats: Flats,
  bits: FamilyBits,
  beside?: Beside,
): readonly HalfTable[] =>
  halfTablesOn(
    halves.map((half) => (half === null ? null : () => groundsOf(half))),
    checks,
    flats,
    bits,
    beside,
  );

type Beside = (grounds: Grounds, row: number, others: readonly Check[]) => void;

/** The same on these grounds, each made when its turn comes. */
export function halfTablesOn(
  rows: readonly ((() => Grounds) | null)[],
  checks: readonly Check[],
  flats: Flats,
  bits: FamilyBits,
  beside: Beside = () => {},
): readonly HalfTable[] {
  const made = new Map(
    checks.filter(isFlat).map((check): [Check, InWork] => [check, inWork(check, rows.length, flats, bits)]),
  );
  rows.forEach((groundsOn, row) => {
    if (groundsOn === null) return;
    const grounds = groundsOn();
    for (const [check, table] of made) if (!fillRow(table, row, grounds, flats, bits)) made.delete(check);
    beside(
      grounds,
      row,
      checks.filter((check) => !made.has(check)),
    );
  });
  return [...made.values()];
}

const inWork = (check: Check, rows: number, flats: Flats, { words }: FamilyBits): InWork => ({
  check,
  fails: new Uint32Array(rows * words),
  notSettled: new Uint32Array(rows * words),
  judge: flatJudge(check, casesFor(check, flats)),
  asksWay: false,
});

function groundsOf(half: Half): Grounds {
  const anyWay = openGround({ ...half, turned: 'barred' });
  const ways = half.stand === 'barred' ? [] : [false, true].map((turned) => openGround({ ...half, turned }));
  return { anyWay, ways };
}

/** Both ways round where the check asks for it. False: it reads what may not be read. */
function fillRow(
  table: InWork,
  row: number,
  { anyWay, ways }: Grounds,
  flats: Flats,
  bits: FamilyBits,
): boolean {
  const on = (grounds: readonly Case[]): Uint8Array | null =>
    unlessBarred(() => agreed(grounds.map((ground) => table.judge(ground).slice())));
  const found = (table.asksWay ? null : on([anyWay])) ?? (ways.length > 0 ? askedWay(table, on(ways)) : null);
  if (found === null) return false;
  const from = row * bits.words;
  const note = (three: number, index: number): void => {
    if (three === FAILS) addTo(table.fails, from, index);
    if (three === NOT_SETTLED) addTo(table.notSettled, from, index);
  };
  if (table.check.about === 'arrangement') note(found[0] as number, 0);
  else
    flats.kindsOf.forEach((kinds, family) => {
      note(agreedOn(kinds.map((at) => found[at] as number)), family);
    });
  return true;
}

/** Once it was asked, it is not tried again whether it need be. */
function askedWay(table: InWork, found: Uint8Array | null): Uint8Array | null {
  table.asksWay = true;
  return found;
}

/** Over everything that it may be: settled where all of it is so. */
const agreedOn = (all: readonly number[]): number =>
  all.every((each) => each === all[0]) ? (all[0] as number) : NOT_SETTLED;

function agreed(all: readonly Uint8Array[]): Uint8Array {
  const [first, ...others] = all as readonly [Uint8Array, ...Uint8Array[]];
  for (const other of others)
    for (let at = 0; at < first.length; at += 1) if (first[at] !== other[at]) first[at] = NOT_SETTLED;
  return first;
}
