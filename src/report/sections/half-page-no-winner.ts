import type { Decision } from '../../rules/decision.ts';
import { type Block, list, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, strong, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { checkPart } from '../check-part.ts';
import { type ArrangementAt, arrangementAt, checksAt, worstFirst } from '../checks-at.ts';
import { firstNames } from '../first-names.ts';
import { machineName, rotaryName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { worthFinding } from '../worth-finding.ts';
import { stoppers } from './misses.ts';

type Line = readonly Inline[];

const MOST_PARTS = 6;

const count = number(['count'], '');

function forWhat({ inputs: { answers } }: Decision): readonly Line[] {
  const names = answers.parts.map((_, index) => [
    { kind: 'data' as const, path: ['inputs', 'answers', 'parts', index, 'name'], code: false },
  ]);
  return names.length === 0 ? [] : [say`What it has to make: ${enumerate(firstNames(names, MOST_PARTS))}.`];
}

/** Nothing can be said yet: what may still win, and what decides it. */
export function stillOpen(decision: Decision): readonly Block[] {
  const machines = new Map<string, Line>();
  decision.contenders.forEach((id, index) => {
    const at = arrangementAt(decision, id);
    if (at === undefined || machines.has(at.arrangement.machine)) return;
    machines.set(
      at.arrangement.machine,
      machineName(decision, at.arrangement.machine, ['contenders', index]),
    );
  });
  const deciding = worthFinding(decision).map(
    ({ name, ask, isKind }) =>
      say`${name}: ${words(
        ask === 'seller'
          ? 'the seller has to say it, in writing'
          : isKind
            ? 'the shop has to say it'
            : 'the shop can measure it or look it up',
      )}`,
  );
  return [
    paragraph(
      say`${strong(say`Nothing can be recommended yet.`)} ${count} ways to do it were looked at. Something that is not known
        decides which of them is right, so nothing should be ordered or financed now.`,
    ),
    list([
      ...forWhat(decision),
      ...(machines.size === 0
        ? []
        : [
            say`Machines that may still be it: ${enumerate(firstNames([...machines.values()], MOST_PARTS))}.`,
          ]),
      ...budget(),
    ]),
    ...(deciding.length === 0
      ? []
      : [paragraph(say`${strong(say`Most worth finding out, the first of it first:`)}`), list(deciding)]),
  ];
}

const budget = (): readonly Line[] => [
  say`The budget: ${number(['inputs', 'answers', 'money', 'budget'], 'money', { ifNull: 'not named' })}.`,
];

/** Nothing fits: what stood in the way, and how near the nearest came. */
export function nothingToBuy(decision: Decision): readonly Block[] {
  const [id] = decision.nearestMisses;
  const at = id === undefined ? undefined : arrangementAt(decision, id);
  const nearest = at === undefined ? [] : nearestLine(decision, at);
  return [
    paragraph(
      say`${strong(say`Nothing in this catalog does the work, so nothing should be ordered.`)} ${count} ways to do it were
        looked at, and each of them fails at something that has to hold.`,
    ),
    list([...forWhat(decision), ...budget(), ...nearest]),
    ...stoppers(decision),
  ];
}

/** By how much the nearest falls short, at the check that stops it. */
function nearestLine(decision: Decision, at: ArrangementAt): readonly Line[] {
  const { arrangement, path } = at;
  const machine = machineName(decision, arrangement.machine, [...path, 'machine']);
  const name =
    arrangement.rotary === null
      ? machine
      : say`${machine} with ${rotaryName(decision, arrangement.rotary, [...path, 'rotary'])}`;
  const failing = worstFirst(checksAt(at).filter(({ result }) => result.verdict === 'fails'));
  const first = failing.find(({ result }) => result.check === arrangement.dropped?.check) ?? failing[0];
  if (first === undefined) return [say`The nearest is ${name}: it does too little of the work.`];
  const { need, have, short } = checkNumbers(first);
  const { check } = first.result;
  const part = checkPart(decision, first);
  const where = part === null ? [] : say`, for ${part}`;
  const by = short.length === 0 ? [] : say`, so it falls short by ${short}`;
  return [
    say`The nearest is ${name}. What stops it first is ${words(CHECK_WORDS[check].name)}${where}: needed ${need}, there is ${have}${by}.`,
  ];
}
