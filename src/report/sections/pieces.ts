import type { Decision } from '../../rules/decision.ts';
import { enumerate, type Inline, number, say, words } from '../blocks/inline.ts';
import type { ArrangementAt } from '../checks-at.ts';
import { leaning } from '../leaning.ts';
import { machineName, rotaryName } from '../names.ts';
import { orientation } from '../orientation.ts';
import { CLASS_WORDS, CLEARANCE_WORDS, MACHINE_KIND_WORDS, PLATE_WORDS } from '../wording/arrangement.ts';

type Line = readonly Inline[];

/** What the arrangement is made of, a line each: machine, rotary, what is added. */
export const pieces = (decision: Decision, at: ArrangementAt): readonly Line[] => [
  machineLine(decision, at),
  ...rotaryLine(decision, at),
  ...additions(at),
];

function machineLine(decision: Decision, { arrangement, path }: ArrangementAt): Line {
  const name = machineName(decision, arrangement.machine, [...path, 'machine']);
  const row = decision.inputs.catalog.machines.find(({ id }) => id === arrangement.machine);
  if (row === undefined) return say`Machine: ${name}.`;
  return say`Machine: ${name}, ${words(
    row.spindle === 'unknown'
      ? `${MACHINE_KIND_WORDS[row.kind]}, taken as vertical`
      : `${row.spindle} ${MACHINE_KIND_WORDS[row.kind]}`,
  )}.`;
}

function rotaryLine(decision: Decision, { arrangement, path }: ArrangementAt): readonly Line[] {
  const { title, means } = CLASS_WORDS[arrangement.class];
  if (arrangement.rotary === null) return [say`Rotary: the machine’s own table.`];
  const name = rotaryName(decision, arrangement.rotary, [...path, 'rotary']);
  // what the class means is told of an axis that is level
  const machine = decision.inputs.catalog.machines.find(({ id }) => id === arrangement.machine);
  if (machine?.spindle === 'horizontal') return [say`Rotary: ${name}, ${words(title)}.`];
  return [say`Rotary: ${name}, ${words(title)} (${words(means)}).`];
}

/** Which way round it stands, and which way the work leans. */
export const wayRound = (decision: Decision, { arrangement }: ArrangementAt): readonly Line[] =>
  [orientation(arrangement, decision), leaning(arrangement, decision)].flatMap((sentence) =>
    sentence === null ? [] : [[words(sentence)]],
  );

/** Which way round it stands, where, and how far it can be moved. */
export function standing(decision: Decision, at: ArrangementAt): readonly Line[] {
  const { arrangement, path } = at;
  const leans = wayRound(decision, at);
  const { place } = arrangement;
  if (place === null) return leans;
  const of = (key: string): Inline => number([...path, 'place', key], 'mm');
  const row = decision.inputs.catalog.machines.find(({ id }) => id === arrangement.machine);
  if (row?.spindle === 'horizontal')
    return [
      ...leans,
      say`Place of the rotary axis, from the middle of the table: X ${of('x')}. From end to end it can be moved by
        ${of('slackX')} along X before something is out of reach.`,
    ];
  return [
    ...leans,
    say`Place of the rotary center, from the middle of the table: X ${of('x')}, Y ${of('y')}. From end to
      end it can be moved by ${of('slackX')} along X and ${of('slackY')} along Y before something is out of reach.`,
    ...freeTable(at),
  ];
}

/** What stays of the table on each side, and the vises there. */
function freeTable({ arrangement: { space }, path }: ArrangementAt): readonly Line[] {
  if (space === null) return [];
  const of = (key: keyof typeof space, unit: string): Inline => number([...path, 'space', key], unit);
  return [
    say`Table that stays free beside rotary and work: ${of('left', 'mm')} on the left, room for this many vises:
      ${of('stationsLeft', '')}; ${of('right', 'mm')} on the right, vises: ${of('stationsRight', '')}. Below zero nothing is left
      there.`,
  ];
}

function additions(at: ArrangementAt): readonly Line[] {
  const all = added(at);
  return all.length === 0
    ? [say`Added to make it fit: nothing.`]
    : [say`Added to make it fit: ${enumerate(all)}.`];
}

/** Additions and plates that it was judged with. Example: 'lowered table and riser under the rotary, 55 mm thick'. */
export const settingOf = (at: ArrangementAt): Line => {
  const all = added(at);
  return all.length === 0 ? say`no additions or plates` : enumerate(all);
};

function added({ arrangement, path }: ArrangementAt): readonly (Inline | Line)[] {
  const clearance = arrangement.clearance.map((kind) => words(CLEARANCE_WORDS[kind]));
  const plates = arrangement.plates.map((plate, index) => {
    const thickness = number([...path, 'plates', index, 'thickness'], 'mm');
    return say`${words(PLATE_WORDS[plate.why])}, ${thickness} thick`;
  });
  return [...clearance, ...plates];
}
