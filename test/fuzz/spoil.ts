import { parse } from 'yaml';
import type { Chance } from '../../bench/interviews/chance.ts';
import { NASTY_PIECES, NASTY_TEXTS, NASTY_VALUES } from './nasty.ts';

export const oneOf = <Item>(items: readonly Item[], chance: Chance): Item => {
  const item = items[Math.floor(chance.next() * items.length)];
  if (item === undefined) throw new RangeError('there is nothing to draw from');
  return item;
};

const upTo = (end: number, chance: Chance): number => Math.floor(chance.next() * (end + 1));

/** A good file with something wrong in it, by chance: in what it says, in its text, or in its bytes. */
export function spoiled(seeds: readonly Uint8Array[], chance: Chance): Buffer {
  const seed = Buffer.from(oneOf(seeds, chance));
  const kind = chance.next();
  if (kind < 0.6) {
    const data = dataIn(seed);
    const other = kind < 0.3 ? renamed : otherwise;
    if (data !== undefined) return Buffer.from(JSON.stringify(other(data, chance), null, 1));
  }
  if (kind < 0.88) return spoiledText(seed, seeds, chance);
  return spoiledBytes(seed, chance);
}

function dataIn(seed: Buffer): unknown {
  try {
    const data: unknown = parse(seed.toString('utf8'));
    return typeof data === 'object' && data !== null ? data : undefined;
  } catch {
    return undefined;
  }
}

/** Keys of texts that anything may stand in. */
const SAID = /^(name|title|about|maker|currency|source|note|why|hint|hints|ask|text|value)$/;

/** Every text that somebody made up is perhaps one that means harm; all else stays good. */
function renamed(data: unknown, chance: Chance, key = ''): unknown {
  if (typeof data === 'string')
    return SAID.test(key) && chance.happens(0.3) ? oneOf(NASTY_TEXTS, chance) : data;
  if (Array.isArray(data)) return data.map((each: unknown) => renamed(each, chance, key));
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(
    Object.entries(data).map(([each, value]) => [each, renamed(value, chance, each)]),
  );
}

/** One to three values, keys or entries are others, gone, or there more than once. */
function otherwise(data: unknown, chance: Chance): unknown {
  let now = data;
  for (let left = 1 + upTo(2, chance); left > 0; left -= 1) now = changedSomewhere(now, chance);
  return now;
}

function changedSomewhere(value: unknown, chance: Chance): unknown {
  if (typeof value !== 'object' || value === null) return oneOf(NASTY_VALUES, chance);
  if (Array.isArray(value)) {
    const at = upTo(value.length - 1, chance);
    const what = chance.next();
    if (value.length === 0 || what < 0.05) return [...value, oneOf(NASTY_VALUES, chance)];
    if (what < 0.1) return value.filter((_, index) => index !== at);
    if (what < 0.15) return [...value, value[at]];
    if (what < 0.2) return value.toReversed();
    return value.map((each: unknown, index) => (index === at ? changedSomewhere(each, chance) : each));
  }
  const keys = Object.keys(value);
  if (keys.length === 0) return { [oneOf(NASTY_TEXTS, chance)]: 1 };
  const key = oneOf(keys, chance);
  const { [key]: old, ...rest } = value as Record<string, unknown>;
  const what = chance.next();
  if (what < 0.04) return rest;
  if (what < 0.08) return { ...rest, [oneOf(NASTY_TEXTS, chance)]: old };
  if (what < 0.1) return { ...rest, [`${key}s`]: old };
  return { ...value, [key]: what < 0.25 ? oneOf(NASTY_VALUES, chance) : changedSomewhere(old, chance) };
}

function spoiledText(seed: Buffer, seeds: readonly Uint8Array[], chance: Chance): Buffer {
  let text = seed.toString('utf8');
  for (let left = 1 + upTo(3, chance); left > 0; left -= 1) text = spoiledOnce(text, seeds, chance);
  return Buffer.from(text, 'utf8');
}

function spoiledOnce(text: string, seeds: readonly Uint8Array[], chance: Chance): string {
  const [one, other] = [upTo(text.length, chance), upTo(text.length, chance)];
  const [from, to] = [Math.min(one, other), Math.max(one, other)];
  const short = Math.min(to, from + 40);
  const piece = (): string =>
    chance.happens(0.7) ? oneOf(NASTY_PIECES, chance) : oneOf(NASTY_TEXTS, chance);
  switch (upTo(9, chance)) {
    case 0:
      return text.slice(0, from);
    case 1:
      return text.slice(0, from) + text.slice(short);
    case 2:
      return text.slice(0, to) + text.slice(from, to) + text.slice(to);
    case 3:
      return text.replaceAll('\n', chance.happens(0.7) ? '\r\n' : '\r');
    case 4:
      return `\ufeff${text}`;
    case 5: {
      const another = Buffer.from(oneOf(seeds, chance)).toString('utf8');
      return text.slice(0, from) + another.slice(upTo(another.length, chance));
    }
    case 6: {
      const lines = text.split('\n');
      const [a, b] = [upTo(lines.length - 1, chance), upTo(lines.length - 1, chance)];
      return lines.map((line, at) => (at === a ? lines[b] : at === b ? lines[a] : line)).join('\n');
    }
    case 7: {
      // the value that follows a colon
      const colon = text.indexOf(': ', from);
      const end = text.slice(colon + 2).search(/[,}\]\n]/);
      if (colon < 0 || end < 0) return text;
      const value = chance.happens(0.5) ? JSON.stringify(oneOf(NASTY_VALUES, chance)) : piece();
      return `${text.slice(0, colon + 2)}${value}${text.slice(colon + 2 + end)}`;
    }
    default:
      return text.slice(0, from) + piece() + text.slice(from);
  }
}

function spoiledBytes(seed: Buffer, chance: Chance): Buffer {
  if (chance.happens(0.1)) return Buffer.from(`\ufeff${seed.toString('utf8')}`, 'utf16le');
  if (chance.happens(0.1)) return seed.subarray(0, upTo(seed.length, chance));
  const bytes = Buffer.from(seed);
  for (let left = 1 + upTo(5, chance); left > 0 && bytes.length > 0; left -= 1)
    bytes[upTo(bytes.length - 1, chance)] = upTo(255, chance);
  return bytes;
}
