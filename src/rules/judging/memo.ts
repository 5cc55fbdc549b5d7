import type { SetUp } from '../arranging/setting-search.ts';
import type { Verdict } from '../decision.ts';
import type { BoxTerms } from '../sides/boxes/box-terms.ts';
import type { Case, Room } from './case.ts';
import type { Check } from './check.ts';
import type { Outcome } from './outcome.ts';
import { changedSince, freshReads, type Reads } from './reads.ts';
import type { Side, SideValue } from './side.ts';

/** Where a case stands in each room, as a number; NaN: nothing of it is kept (places, prices and swaps rarely recur). */
export type Keys = Readonly<Record<Room, number>>;

/** What was found, what it was found from, and the decision since when it is known to be so. */
export interface Entry<Found> {
  readonly found: Found;
  readonly part: number;
  readonly shop: number;
  asOf: number;
}

type Kept<Of, Found> = Map<Of, Map<number, Entry<Found>>>;

/** What has been worked out already. It is used again as long as nothing that went into it has changed. */
export interface Memo {
  readonly reads: Reads;
  readonly sides: Kept<Side, SideValue>;
  readonly outcomes: Kept<Check, Outcome>;
  /** of a family, the worst verdict of these checks */
  readonly verdicts: Kept<readonly Check[], Verdict>;
  readonly boxes: Kept<'boxes', readonly BoxTerms[]>;
  /** by the id of the arrangement */
  readonly setUps: Map<string, Entry<SetUp> & { readonly families: string }>;
  readonly oriented: Map<Case, readonly Case[]>;
  readonly ids: Readonly<Record<Room, Map<string, number>>>;
}

/** How many names of each room a key can tell apart; all together they fit one exact number. */
const RADIX: Readonly<Record<Room, number>> = {
  part: 2 ** 12,
  rotary: 2 ** 12,
  machine: 2 ** 12,
  mounting: 2 ** 4,
  additions: 2 ** 5,
  plates: 2 ** 6,
  turn: 2,
  place: 1,
  price: 1,
  swaps: 1,
};

const ROOMS = Object.keys(RADIX) as Room[];

export const freshMemo = (): Memo => ({
  reads: freshReads(),
  sides: new Map(),
  outcomes: new Map(),
  verdicts: new Map(),
  boxes: new Map(),
  setUps: new Map(),
  oriented: new Map(),
  ids: Object.fromEntries(ROOMS.map((room) => [room, new Map()])) as unknown as Memo['ids'],
});

/** A room has no number left for another name: what is new in it is kept no more. */
export const isFull = ({ ids }: Memo): boolean => ROOMS.some((room) => ids[room].size > RADIX[room]);

/** A small number for a name in its room, the same for the same name; NaN where there are too many. */
export function idOf({ ids }: Memo, room: Room, name: string): number {
  const known = ids[room].get(name);
  if (known !== undefined) return known;
  const id = ids[room].size < RADIX[room] ? ids[room].size : Number.NaN;
  ids[room].set(name, id);
  return id;
}

/** One number for where a case stands in these rooms, in their order; NaN: not kept. */
export function keyOf(rooms: readonly Room[], keys: Keys): number {
  let key = 0;
  for (const room of rooms) key = key * RADIX[room] + keys[room];
  return key;
}

/** The same with another number for the part: that of a family. */
export function keyWith(part: number, rooms: readonly Room[], keys: Keys): number {
  let key = 0;
  for (const room of rooms) key = key * RADIX[room] + (room === 'part' ? part : keys[room]);
  return key;
}

/**
 * What was found before under this key, if nothing that it was found from has changed, else what is made now; it is kept
 * where there is a key. `slot`: of the family that the key is about.
 */
export function once<Of, Found>(
  { reads }: Memo,
  kept: Kept<Of, Found>,
  of: Of,
  key: number,
  slot: number,
  make: () => Found,
): Found {
  if (Number.isNaN(key)) return make();
  let known = kept.get(of);
  if (known === undefined) {
    known = new Map();
    kept.set(of, known);
  }
  const entry = known.get(key);
  if (entry !== undefined && isStill(entry, slot, reads)) return readAgain(entry, reads);
  const made = noted(reads, make);
  known.set(key, made);
  return made.found;
}

/** What is made, with what of the answers was read for it; whatever it is a part of read that too. */
export function noted<Found>(reads: Reads, make: () => Found): Entry<Found> {
  const { part, shop } = reads;
  reads.part = 0;
  reads.shop = 0;
  const entry = { found: make(), part: reads.part, shop: reads.shop, asOf: reads.now };
  reads.part |= part;
  reads.shop |= shop;
  return entry;
}

/** What was found before and is still so: whatever it is a part of read what it read. */
export function readAgain<Found>(entry: Entry<Found>, reads: Reads): Found {
  entry.asOf = reads.now;
  reads.part |= entry.part;
  reads.shop |= entry.shop;
  return entry.found;
}

/** Has nothing changed that it was found from, of this family or of the shop? */
export const isStill = (entry: Entry<unknown>, slot: number, reads: Reads): boolean =>
  entry.asOf === reads.now ||
  !(
    changedSince(entry.shop, reads.shopChanged, entry.asOf) ||
    changedSince(entry.part, reads.partChanged[slot], entry.asOf)
  );
