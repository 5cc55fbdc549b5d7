import type { Answers } from '../questions/answers.ts';
import type { Decision } from '../rules/decision.ts';
import { codeData, type Inline, say, words } from './blocks/inline.ts';
import type { Path } from './blocks/path.ts';
import { machineName, partName, rotaryName } from './names.ts';
import { splitValuePath, valueUnit, valueWords } from './value-words.ts';

/** Whose a value is: a family, a machine or a rotary. */
export interface Owner {
  /** tells owners apart */
  readonly id: string;
  readonly name: readonly Inline[];
}

/** The owner of a value by its path; null where it has none. `at` says where the path was read. */
export function ownerOf(decision: Decision, path: string, at: Path): Owner | null {
  const { list, name } = splitValuePath(path);
  if (list === null) return null;
  const { answers, catalog } = decision.inputs;
  const id = `${list}[${name}]`;
  if (list === 'parts') {
    const isThere = answers.parts.some((part) => part.name === name);
    return isThere ? { id, name: [partName(decision, name, at)] } : null;
  }
  if (!catalog[list].some((row: { readonly id: string }) => row.id === name)) return null;
  return { id, name: list === 'machines' ? machineName(decision, name, at) : rotaryName(decision, name, at) };
}

/**
 * A path as values have words for it: means of lifting by what lifts, not by their place.
 * Example: `shop.lifting[0].capacity` → `shop.lifting.hoist.capacity`.
 */
export const wordedPath = (path: string, { shop }: Answers): string =>
  path.replace(/^shop\.lifting\[(\d+)\]/, (whole, index) => {
    const means = shop.lifting === 'unknown' ? undefined : shop.lifting[Number(index)];
    return means === undefined ? whole : `shop.lifting.${means.by}`;
  });

/** The unit of the number at a path of a decision; empty where it has none. */
export const unitOfValue = ({ inputs }: Decision, path: string): string =>
  valueUnit(wordedPath(path, inputs.answers));

/** What a value is, without whose; the path itself where it has no words. */
export function valueTitle(path: string, at: Path): readonly Inline[] {
  const found = valueWords(path);
  return found === undefined ? [codeData(at)] : [words(found.words)];
}

/**
 * A value by its path, in words. Example: `parts[Lock gate hinge].depthSide` → 'depth from the sides (Lock gate
 * hinge)'. `at` says where the path was read; it is printed as it is where it has no words.
 */
export function valueName(decision: Decision, path: string, at: Path): readonly Inline[] {
  const worded = wordedPath(path, decision.inputs.answers);
  if (valueWords(worded) === undefined) return [codeData(at)];
  if (splitValuePath(path).list === null) return valueTitle(worded, at);
  const owner = ownerOf(decision, path, at);
  return owner === null ? [codeData(at)] : say`${valueTitle(path, at)} (${owner.name})`;
}
