import type { Decision } from '../rules/decision.ts';
import { codeData, type Inline, say, words } from './blocks/inline.ts';
import type { Path } from './blocks/path.ts';
import { machineName, partName, rotaryName } from './names.ts';
import { splitValuePath, valueWords } from './value-words.ts';

/**
 * A value by its path, in words. Example: `parts[Lock gate hinge].depthSide` → 'depth from the sides (Lock gate
 * hinge)'. `at` says where the path was read; it is printed as it is where it has no words.
 */
export function valueName(decision: Decision, path: string, at: Path): readonly Inline[] {
  const found = valueWords(path);
  const { list, name } = splitValuePath(path);
  if (found === undefined) return [codeData(at)];
  const what = words(found.words);
  if (list === null) return [what];
  const { answers, catalog } = decision.inputs;
  const owners: readonly { readonly id?: string; readonly name: string }[] =
    list === 'parts' ? answers.parts : catalog[list];
  if (!owners.some((owner) => (list === 'parts' ? owner.name : owner.id) === name)) return [codeData(at)];
  if (list === 'parts') return say`${what} (${partName(decision, name, at)})`;
  const owner = list === 'machines' ? machineName(decision, name, at) : rotaryName(decision, name, at);
  return say`${what} (${owner})`;
}
