import type { Decision } from '../rules/decision.ts';
import { codeData, data, type Inline, say, words } from './blocks/inline.ts';
import type { Path } from './blocks/path.ts';
import { LEVEL_TOOL_WORDS, MOUNTING_WORDS } from './wording/arrangement.ts';

/** Names of parts, rows and arrangements as pieces of a sentence, each with the place where it stands. */

type RowList = 'machines' | 'rotaries';

/** The name of a catalog row; its id behind it where two rows have the same name. `idPath`: where the id was read. */
function rowName(decision: Decision, kind: RowList, id: string, idPath: Path): readonly Inline[] {
  const rows: readonly { readonly id: string; readonly name: string }[] = decision.inputs.catalog[kind];
  const index = rows.findIndex((row) => row.id === id);
  const row = rows[index];
  if (row === undefined) return [codeData(idPath)];
  const path: Path = ['inputs', 'catalog', kind, index];
  const name = data([...path, 'name']);
  const twins = rows.filter((other) => other.name === row.name).length > 1;
  return twins ? [name, words(' ('), codeData([...path, 'id']), words(')')] : [name];
}

export const machineName = (decision: Decision, id: string, idPath: Path): readonly Inline[] =>
  rowName(decision, 'machines', id, idPath);

export const rotaryName = (decision: Decision, id: string, idPath: Path): readonly Inline[] =>
  rowName(decision, 'rotaries', id, idPath);

/**
 * An arrangement by its id. Example: `rowan+wren/tilt-along-y` → 'Rowan with Wren (tilt axis along Y)'.
 * `idPath` says where the id was read; it is printed as it is where it names nothing in the catalog.
 */
export function arrangementName(decision: Decision, id: string, idPath: Path): readonly Inline[] {
  const slash = id.lastIndexOf('/');
  const [machine = '', rotary] = id.slice(0, slash).split('+');
  const mounting = id.slice(slash + 1);
  if (slash < 0 || !isMounting(mounting) || !hasRow(decision, 'machines', machine)) return [codeData(idPath)];
  const on = machineName(decision, machine, idPath);
  const mounted = words(
    isHorizontal(decision, machine) ? LEVEL_TOOL_WORDS[mounting] : MOUNTING_WORDS[mounting],
  );
  if (rotary === undefined) return say`${on} (${mounted})`;
  if (!hasRow(decision, 'rotaries', rotary)) return [codeData(idPath)];
  return say`${on} with ${rotaryName(decision, rotary, idPath)} (${mounted})`;
}

const isMounting = (text: string): text is keyof typeof MOUNTING_WORDS => Object.hasOwn(MOUNTING_WORDS, text);

const isHorizontal = ({ inputs }: Decision, machine: string): boolean =>
  inputs.catalog.machines.find(({ id }) => id === machine)?.spindle === 'horizontal';

const hasRow = (decision: Decision, kind: RowList, id: string): boolean =>
  decision.inputs.catalog[kind].some((row: { readonly id: string }) => row.id === id);

/** The name of a family. `namePath` says where it was read, for the case that no answer has that name. */
export function partName(decision: Decision, name: string, namePath: Path): Inline {
  const index = decision.inputs.answers.parts.findIndex((part) => part.name === name);
  return index < 0 ? data(namePath) : data(['inputs', 'answers', 'parts', index, 'name']);
}
