import type { Decision } from '../../rules/decision.ts';
import { type Block, list, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { type ArrangementAt, arrangementAt } from '../checks-at.ts';
import { firstNames } from '../first-names.ts';
import { arrangementName, machineName, rotaryName } from '../names.ts';

/** More lines than this are no help to somebody who has to choose; the decision file has them all. */
const MOST_MACHINES = 12;
/** With more than so many arrangements left, names of rotaries tell them apart no longer: a few stand for all. */
const MANY = 100;
const MOST_ROTARIES = 4;

/** What may still win, a line a machine. */
export function contenders(decision: Decision): readonly Block[] {
  const unseen = decision.market?.unseen ?? 0;
  if (decision.contenders.length + unseen === 0) return [];
  const lines = new Map<
    string,
    { readonly name: readonly Inline[]; readonly with: Map<string, readonly Inline[]> }
  >();
  decision.contenders.forEach((id, index) => {
    const idPath: Path = ['contenders', index];
    const at = arrangementAt(decision, id);
    const machine = at?.arrangement.machine ?? id;
    const name =
      at === undefined ? arrangementName(decision, id, idPath) : machineName(decision, machine, idPath);
    const line = lines.get(machine) ?? { name, with: new Map() };
    for (const [rotary, called] of rotaryOf(decision, at)) line.with.set(rotary, called);
    lines.set(machine, line);
  });
  const most = decision.contenders.length > MANY ? MOST_ROTARIES : Number.POSITIVE_INFINITY;
  const items = [...lines.values()].map(({ name, with: rotaries }) =>
    rotaries.size === 0
      ? name
      : say`${name} with ${enumerate(firstNames([...rotaries.values()], most), 'or')}`,
  );
  const shown = items.length > MOST_MACHINES ? [...items.slice(0, MOST_MACHINES), say`and others`] : items;
  const orAnother =
    unseen === 0 ? [] : [say`one of ${number(['market', 'unseen'], '')} that were too many to be judged`];
  return [paragraph(say`These may still win:`), list([...shown, ...orAnother])];
}

function rotaryOf(
  decision: Decision,
  at: ArrangementAt | undefined,
): readonly (readonly [id: string, name: readonly Inline[]])[] {
  if (at === undefined) return [];
  const { rotary } = at.arrangement;
  if (rotary === null) return [['', [words('its own table')]]];
  return [[rotary, rotaryName(decision, rotary, [...at.path, 'rotary'])]];
}
