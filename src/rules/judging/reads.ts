import type { PartCase, ShopCase } from './case.ts';
import type { SiteCase } from './site-case.ts';

/**
 * What a piece of work read of the answers, so that it is done again only where one of those changed. A bit for each
 * field of a part, of the shop and of its building; when each changed last is counted in decisions.
 */
export interface Reads {
  /** the decision in hand */
  now: number;
  /** bits of what the work in hand has read so far */
  part: number;
  shop: number;
  readonly shopChanged: number[];
  /** by the slot of a family; its kinds count as one */
  readonly partChanged: number[][];
}

export const freshReads = (): Reads => ({ now: 0, part: 0, shop: 0, shopChanged: [], partChanged: [] });

type Bits<Of> = Readonly<Partial<Record<keyof Of, number>>>;

const PART_FIELDS: readonly (keyof PartCase)[] = [
  ...(['shape', 'motion', 'heldByCollet', 'interrupted', 'approaches', 'kinds'] as const),
  ...(['length', 'width', 'height', 'planRadius', 'eccentricity', 'mass', 'tilt'] as const),
  ...(['fixtureDiameter', 'fixtureHeight', 'fixtureMass', 'depthTop', 'depthSide'] as const),
  ...(['lowestSideFeature', 'tolerance', 'brakeSafety', 'cut', 'contourCut', 'drillThrust'] as const),
  ...(['drillOffset', 'contourFeed', 'contourRadius', 'chordError'] as const),
];

/** Several that change together share a bit. */
const SHOP_FIELDS: readonly (readonly (keyof ShopCase)[])[] = [
  ['assume'],
  ['toolShortest'],
  ['toolLongest'],
  ['largestCutter'],
  ['viseWidth', 'viseLength'],
  ['byHand'],
  ['visesWanted', 'visesAsked'],
  ['switchesPerWeek', 'swapMinutes'],
  ['budget'],
  ['platePrice'],
  ['money'],
];
const SITE_FIELDS: readonly (readonly (keyof SiteCase)[])[] = [
  ['owned'],
  ['bay'],
  ['ceiling'],
  ['doorWidth', 'doorHeight', 'doorSill'],
  ['floorRating'],
  ['kVA', 'volts', 'phases'],
  ['airFlow', 'airBar'],
  ['silent'],
  ['lifting'],
];

/** 30 bits are whole small numbers; more fields than that would need a second word. */
const bitsOf = <Of>(fields: readonly (readonly (keyof Of)[])[], from: number): Bits<Of> =>
  Object.fromEntries(fields.flatMap((each, index) => each.map((field) => [field, from + index]))) as Bits<Of>;

const PART_BITS = bitsOf<PartCase>(
  PART_FIELDS.map((field) => [field]),
  0,
);
const SHOP_BITS = bitsOf<ShopCase>(SHOP_FIELDS, 0);
const SITE_BITS = bitsOf<SiteCase>(SITE_FIELDS, SHOP_FIELDS.length);

/** The same part; what is read of it is noted. */
export const notedPart = (part: PartCase, reads: Reads): PartCase =>
  noted(part, PART_BITS, (bit) => {
    reads.part |= bit;
  });

/** The same shop and building; what is read of them is noted. */
export function notedShop(shop: ShopCase, reads: Reads): ShopCase {
  const note = (bit: number): void => {
    reads.shop |= bit;
  };
  return noted({ ...shop, site: noted(shop.site, SITE_BITS, note) }, SHOP_BITS, note);
}

function noted<Of extends object>(plain: Of, bits: Bits<Of>, note: (bit: number) => void): Of {
  const made = {};
  for (const field of Object.keys(plain) as (keyof Of)[]) {
    const at = bits[field];
    const bit = at === undefined ? 0 : 1 << at;
    Object.defineProperty(made, field, {
      enumerable: true,
      get: () => {
        note(bit);
        return plain[field];
      },
    });
  }
  return made as Of;
}

/** What each field of the shop says, as text: equal texts, equal values. */
export function shopTexts(shop: ShopCase): readonly string[] {
  return [
    ...SHOP_FIELDS.map((fields) => textOf(fields.map((field) => shop[field]))),
    ...SITE_FIELDS.map((fields) => textOf(fields.map((field) => shop.site[field]))),
  ];
}

/** The same of a family, over all of its kinds. */
export const partTexts = (cases: readonly PartCase[]): readonly string[] =>
  PART_FIELDS.map((field) => textOf(cases.map((each) => each[field])));

const textOf = (value: unknown): string =>
  JSON.stringify(value, (_, each) =>
    typeof each === 'number' && !Number.isFinite(each) ? String(each) : each,
  ) ?? '';

/** Notes the decision in hand at every field whose text is another than before. */
export function noteChanges(
  changed: number[],
  before: readonly string[],
  now: readonly string[],
  at: number,
): void {
  now.forEach((text, index) => {
    if (before[index] !== text) changed[index] = at;
  });
}

/** Has anything of these bits changed since? */
export function changedSince(bits: number, changed: readonly number[] | undefined, since: number): boolean {
  if (changed === undefined) return false;
  for (let left = bits; left !== 0; left &= left - 1) {
    const index = 31 - Math.clz32(left & -left);
    if ((changed[index] ?? 0) > since) return true;
  }
  return false;
}
