import type { Catalog } from '../catalog/catalog.ts';
import type { Answers, Part } from '../questions/answers.ts';
import type { World } from './arranging/setting.ts';
import { partCases } from './facts/part-facts.ts';
import { shopCase } from './facts/shop-facts.ts';
import type { PartCase, ShopCase } from './judging/case.ts';
import { freshMemo, isFull, type Memo } from './judging/memo.ts';
import { noteChanges, notedPart, notedShop, partTexts, shopTexts } from './judging/reads.ts';

/** What a decision has at hand: the shop, what was worked out before, and the kinds of a part. */
export interface AtHand {
  readonly shop: ShopCase;
  readonly world: World;
  readonly casesOf: (part: Part) => readonly PartCase[];
}

/** What stays worked out between two decisions on one catalog. */
interface Kept {
  readonly memo: Memo;
  shopTexts: readonly string[];
  /** by the name of the family, and which of those of that name it is */
  readonly slots: Map<string, Slot>;
}

interface Slot {
  readonly number: number;
  /** all that went into its cases, as text */
  content: string;
  texts: readonly string[];
  cases: readonly PartCase[];
}

const kept = new WeakMap<Catalog, Kept>();

/** More families than these, counting the names that are gone, and old work only takes room. */
const MOST_SLOTS = 200;

/** For a decision on these answers: what is worked out for them is held against what was worked out before. */
export function atHand(answers: Answers, catalog: Catalog): AtHand {
  const before = kept.get(catalog);
  const usable = before !== undefined && before.slots.size <= MOST_SLOTS && !isFull(before.memo);
  const now: Kept = usable ? before : { memo: freshMemo(), shopTexts: [], slots: new Map() };
  kept.set(catalog, now);
  const { memo } = now;
  const { reads } = memo;
  reads.now += 1;
  // these hang on the cases of one decision
  memo.oriented.clear();
  const plain = shopCase(answers);
  const texts = shopTexts(plain);
  noteChanges(reads.shopChanged, now.shopTexts, texts, reads.now);
  now.shopTexts = texts;
  const shop = notedShop(plain, reads);
  const timesSeen = new Map<string, number>();
  const casesOf = (part: Part): readonly PartCase[] => {
    const times = timesSeen.get(part.name) ?? 0;
    timesSeen.set(part.name, times + 1);
    return casesIn(now, `${part.name}/${times}`, part, plain);
  };
  return { shop, world: { shop, memo }, casesOf };
}

/** The same cases for the same answers; else those fields are noted that are new. */
function casesIn({ memo, slots }: Kept, name: string, part: Part, shop: ShopCase): readonly PartCase[] {
  const { yearly: _yearly, must: _must, ...judgedOn } = part;
  const content = JSON.stringify([judgedOn, shop.assume, shop.largestCutter]);
  const slot = slots.get(name) ?? { number: slots.size, content: '', texts: [], cases: [] };
  slots.set(name, slot);
  if (slot.content === content) return slot.cases;
  const { reads } = memo;
  const plain = partCases(part, shop);
  const texts = partTexts(plain);
  const changed = reads.partChanged[slot.number] ?? [];
  reads.partChanged[slot.number] = changed;
  noteChanges(changed, plain.length === slot.cases.length ? slot.texts : [], texts, reads.now);
  slot.content = content;
  slot.texts = texts;
  slot.cases = plain.map((each, index) =>
    notedPart({ ...each, key: `${slot.number}#${index}`, slot: slot.number }, reads),
  );
  return slot.cases;
}
