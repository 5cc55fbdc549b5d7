import { isMap } from '../documents/fields/strict-map.ts';
import { sameDecimal, writtenNumber } from './numbers-as-written.ts';

/** One thing that an export says and that does not come out so. Null: it is not there. */
export interface Difference {
  /** a path in the decision, or a line of the paper */
  readonly where: string;
  readonly says: string | null;
  readonly comesOut: string | null;
}

/**
 * Every value of two decisions that is not the same, read with their numbers as written. Arrangements are held against
 * each other by their ids, all else by its place.
 */
export function differences(says: unknown, comesOut: unknown, where = ''): readonly Difference[] {
  if (Array.isArray(says) && Array.isArray(comesOut)) return inLists(says, comesOut, where);
  if (isMap(says) && isMap(comesOut)) return inMaps(says, comesOut, where);
  return sameValue(says, comesOut) ? [] : [{ where, says: shown(says), comesOut: shown(comesOut) }];
}

/** How many numbers a value holds. */
export function countNumbers(value: unknown): number {
  if (Array.isArray(value)) return value.reduce<number>((sum, each) => sum + countNumbers(each), 0);
  if (isMap(value)) return countNumbers(Object.values(value));
  return writtenNumber(value) === undefined ? 0 : 1;
}

type RawMap = Readonly<Record<string, unknown>>;

const inMaps = (says: RawMap, comesOut: RawMap, where: string): readonly Difference[] =>
  [...new Set([...Object.keys(says), ...Object.keys(comesOut)])].flatMap((key) =>
    differences(
      Object.hasOwn(says, key) ? says[key] : undefined,
      Object.hasOwn(comesOut, key) ? comesOut[key] : undefined,
      where === '' ? key : `${where}.${key}`,
    ),
  );

function inLists(
  says: readonly unknown[],
  comesOut: readonly unknown[],
  where: string,
): readonly Difference[] {
  const ids = [idsOf(says), idsOf(comesOut)] as const;
  if (ids[0] !== null && ids[1] !== null && ids[0].join('\n') !== ids[1].join('\n')) {
    return inMaps(byId(says, ids[0]), byId(comesOut, ids[1]), where);
  }
  const longest = Math.max(says.length, comesOut.length);
  return Array.from({ length: longest }, (_, at) => at).flatMap((at) =>
    differences(says[at], comesOut[at], `${where}[${ids[1]?.[at] ?? at}]`),
  );
}

/** The ids of a list whose every item has one, all different. */
function idsOf(list: readonly unknown[]): readonly string[] | null {
  const ids = list.map((each) => (isMap(each) ? each.id : undefined));
  const all = ids.every((id): id is string => typeof id === 'string');
  return all && new Set(ids).size === ids.length ? ids : null;
}

const byId = (list: readonly unknown[], ids: readonly string[]): RawMap =>
  Object.fromEntries(list.map((each, at) => [`[${ids[at]}]`, each]));

function sameValue(says: unknown, comesOut: unknown): boolean {
  const [one, other] = [writtenNumber(says), writtenNumber(comesOut)];
  if (one !== undefined && other !== undefined) return sameDecimal(one, other);
  return says === comesOut;
}

const LONGEST = 60;

function shown(value: unknown): string | null {
  if (value === undefined) return null;
  const number = writtenNumber(value);
  if (number !== undefined) return number;
  const text = JSON.stringify(value, (_key, each: unknown) => writtenNumber(each) ?? each);
  return text.length <= LONGEST ? text : `${text.slice(0, LONGEST)}…`;
}
