import { MATERIALS } from '../../src/mechanics/forces/materials.ts';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { NOT_SURE, type NotSureKey } from '../../src/questions/ranges.ts';

/**
 * Answers of a shop that knows less, and the same shop when it knows more. Every numeric answer is one of: not sure,
 * a range inside what *not sure* stands for, a smaller range inside that, the number; every kind is open or known.
 */

type Tree = { readonly [key: string]: unknown };
type Path = readonly string[];

/** What somebody knows of one answer, from nothing to all. */
const LEVELS = ['unknown', 'wide', 'narrow', 'known'] as const;
type Level = (typeof LEVELS)[number];

export interface Narrowing {
  readonly before: Answers;
  readonly after: Answers;
  /** what is known better afterwards, for the message of a failure */
  readonly changed: readonly string[];
}

/** Random numbers from 0 to 1 that are the same for the same seed. */
export function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** *Not sure* of these stands for one value that is said, and no range: a number of one's own is no narrowing. */
const STANDS_FOR_ONE: ReadonlySet<string> = new Set([
  'work.vise.width',
  'work.vise.length',
  'money.plates',
  'shop.lifting.hand.reach',
  'shop.lifting.hand.from',
  'shop.lifting.hand.lift',
  // worked out from size, material and share
  'parts.mass',
]);

/**
 * Where nobody answers these, nothing is held against them, and the result says so: a limit that is named afterwards
 * may drop what had passed, and what vises or hours are worth may turn who is recommended. Naming them is no narrowing.
 */
const SAYS_NOTHING: ReadonlySet<string> = new Set([
  'shop.floorRating',
  'shop.power.kVA',
  'shop.air.flow',
  'shop.air.bar',
  'money.budget',
  'money.shopRate',
  'work.visesWanted',
]);

/** Where a numeric answer stands, and which range *not sure* is. */
interface Leaf {
  readonly path: Path;
  readonly key: NotSureKey;
  readonly value: number;
}

const hasOwn = (key: string): key is NotSureKey => Object.hasOwn(NOT_SURE, key);

function leavesOf(tree: unknown, path: Path, plain: string): readonly Leaf[] {
  if (typeof tree === 'number') return hasOwn(plain) ? [{ path, key: plain, value: tree }] : [];
  if (typeof tree !== 'object' || tree === null) return [];
  return Object.entries(tree).flatMap(([key, value]) => {
    const named = Array.isArray(tree) ? plain : plain === '' ? key : `${plain}.${key}`;
    return leavesOf(value, [...path, key], plainOf(named, tree as Tree));
  });
}

/** `parts.approaches.slant` → `parts.slant`; a means of lifting has its kind in the path. */
function plainOf(path: string, { by }: Tree): string {
  const plain = path.replace('parts.approaches.', 'parts.').replace('parts.contourCut.', 'parts.cut.');
  return plain.startsWith('shop.lifting.') && typeof by === 'string'
    ? plain.replace('shop.lifting.', `shop.lifting.${by}.`)
    : plain;
}

function put(tree: unknown, path: Path, value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (Array.isArray(tree))
    return tree.map((each, index) => (String(index) === key ? put(each, rest, value) : each));
  return { ...(tree as Tree), [key]: put((tree as Tree)[key], rest, value) };
}

const at = (tree: unknown, path: Path): unknown =>
  path.reduce<unknown>((found, key) => (found as Tree | undefined)?.[key], tree);

/** Kinds of a part and of the shop that may be open. */
const KINDS_OF_A_PART: readonly Path[] = [
  ['shape'],
  ['stands'],
  ['material'],
  ['approaches'],
  ['bottom'],
  ['motion'],
  ['holding', 'by'],
  ['cut'],
  ['contourCut'],
];
const KINDS_OF_THE_SHOP: readonly Path[] = [
  ['shop', 'lifting'],
  ['work', 'loading'],
  ['work', 'swap'],
  ['control', 'cam'],
];

/** A number, inside what *not sure* stands for. */
const inside = (value: number, { low, high }: { low: number; high: number }): number =>
  Math.min(high, Math.max(low, value));

/**
 * Draws what is known before and after. `open`: share of the answers that are not known to the last before.
 */
export function narrowing(known: Answers, next: () => number, open: number): Narrowing {
  const truth = leavesOf(known, [], '').reduce<unknown>(
    (tree, { path, key, value }) => put(tree, path, inside(value, NOT_SURE[key])),
    known,
  ) as Answers;
  let [before, after]: [unknown, unknown] = [truth, truth];
  const changed: string[] = [];
  for (const { path, key, value } of leavesOf(truth, [], '')) {
    if (next() >= open) continue;
    const least = STANDS_FOR_ONE.has(key) ? 1 : 0;
    const from = least + Math.floor(next() * (3 - least));
    const to = from === 0 && SAYS_NOTHING.has(key) ? 0 : from + Math.floor(next() * (4 - from));
    const spread = [0.02, 0.2, 1][Math.floor(next() * 3)] ?? 0.2;
    const shares = [next(), next(), next(), next()] as const;
    const shown = (level: Level | undefined): unknown =>
      answerAt(level ?? 'known', value, key, spread, shares);
    before = put(before, path, shown(LEVELS[from]));
    after = put(after, path, shown(LEVELS[to]));
    if (from !== to) changed.push(path.join('.'));
  }
  for (const path of kindsIn(truth)) {
    if (next() >= open) continue;
    before = put(before, path, 'unknown');
    if (next() < 0.5) after = put(after, path, 'unknown');
    else changed.push(path.join('.'));
  }
  for (const index of truth.parts.keys()) {
    if (next() >= open || (before as Answers).parts[index]?.mass !== 'unknown') continue;
    after = put(after, ['parts', String(index), 'mass'], solidMass(truth.parts[index] as Part));
    changed.push(`parts.${index}.mass`);
  }
  return { before: before as Answers, after: after as Answers, changed };
}

function kindsIn(truth: Answers): readonly Path[] {
  const ofParts = [...truth.parts.keys()].flatMap((index) =>
    KINDS_OF_A_PART.map((path) => ['parts', String(index), ...path]),
  );
  // a cut that is described is none of the kinds that are considered
  return [...ofParts, ...KINDS_OF_THE_SHOP].filter((path) => {
    const value = at(truth, path);
    return !(path.at(-1)?.toLowerCase().endsWith('cut') === true && typeof value === 'object');
  });
}

function answerAt(
  level: Level,
  value: number,
  key: NotSureKey,
  spread: number,
  [a, b, c, d]: readonly [number, number, number, number],
): unknown {
  if (level === 'unknown') return 'unknown';
  if (level === 'known') return value;
  const by = spread * Math.max(1, Math.abs(value));
  const [low, high] = [inside(value - by * a, NOT_SURE[key]), inside(value + by * b, NOT_SURE[key])];
  if (level === 'wide') return [low, high];
  return [value - (value - low) * c, value + (high - value) * d];
}

const CUBIC_MM_PER_CUBIC_M = 1e9;

/** What a mass that nobody knows is worked out as. */
function solidMass({ shape, size, diameter, length, material, fill }: Part): number {
  const [a, b, h] = (shape === 'round' ? [diameter, diameter, length] : size).map(Number) as [
    number,
    number,
    number,
  ];
  const round = shape === 'round' ? Math.PI / 4 : 1;
  const density = material === 'unknown' ? 0 : MATERIALS[material].density;
  return (a * b * h * round * density * Number(fill)) / CUBIC_MM_PER_CUBIC_M;
}
