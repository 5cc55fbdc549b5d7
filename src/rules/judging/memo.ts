import type { BoxTerms } from '../sides/boxes/box-terms.ts';
import type { Case, Room } from './case.ts';
import type { Check } from './check.ts';
import type { Outcome } from './outcome.ts';
import type { Side, SideValue } from './side.ts';

/** Where a case stands in each room, as a number; NaN: nothing of it is kept (places, prices and swaps rarely recur). */
export type Keys = Readonly<Record<Room, number>>;

/** What has been worked out already, for the same tools, loading and assumptions. */
export interface Memo {
  readonly sides: Map<Side, Map<number, SideValue>>;
  readonly outcomes: Map<Check, Map<number, Outcome>>;
  /** the same of the checks of the shop, which hang on the building and the money besides */
  readonly ofShop: {
    /** sides that read them */
    readonly reads: ReadonlySet<Side>;
    readonly sides: Map<Side, Map<number, SideValue>>;
    readonly outcomes: Map<Check, Map<number, Outcome>>;
  };
  readonly boxes: Map<'boxes', Map<number, readonly BoxTerms[]>>;
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

export const freshMemo = (ofShop: ReadonlySet<Side>): Memo => ({
  sides: new Map(),
  outcomes: new Map(),
  ofShop: { reads: ofShop, sides: new Map(), outcomes: new Map() },
  boxes: new Map(),
  oriented: new Map(),
  ids: Object.fromEntries(ROOMS.map((room) => [room, new Map()])) as unknown as Memo['ids'],
});

/** The building or the money changed: what the checks of the shop found is forgotten, the rest stays. */
export function forgetShop({ ofShop }: Memo): void {
  ofShop.sides.clear();
  ofShop.outcomes.clear();
}

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

/** What was found before under this key, else what is made now; it is kept where there is a key. */
export function once<Of, Found>(
  kept: Map<Of, Map<number, Found>>,
  of: Of,
  key: number,
  make: () => Found,
): Found {
  if (Number.isNaN(key)) return make();
  let known = kept.get(of);
  if (known === undefined) {
    known = new Map();
    kept.set(of, known);
  }
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = make();
  known.set(key, made);
  return made;
}
