import type { Decision } from '../rules/decision.ts';
import { codeData, type Inline, say, words } from './blocks/inline.ts';
import type { Path } from './blocks/path.ts';
import { machineName, partName, rotaryName } from './names.ts';
import { splitValuePath, valueWords } from './value-words.ts';

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
  if (valueWords(path) === undefined) return [codeData(at)];
  if (splitValuePath(path).list === null) return valueTitle(path, at);
  const owner = ownerOf(decision, path, at);
  return owner === null ? [codeData(at)] : say`${valueTitle(path, at)} (${owner.name})`;
}
