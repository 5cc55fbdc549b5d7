import { type Argument, type Decision, FINDINGS, type Finding } from '../../rules/decision.ts';
import { argumentLine } from '../arguments.ts';
import { type Block, heading, list, paragraph, table } from '../blocks/block.ts';
import { type Inline, number, say, strong, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { arrangementName } from '../names.ts';
import { CLASS_WORDS } from '../wording/arrangement.ts';
import {
  CLASS_ARGUMENT_WORDS,
  FINDING_WORDS,
  NOTHING_PASSES,
  ROUTE_ARGUMENT_WORDS,
  ROUTE_WORDS,
} from '../wording/class-arguments.ts';

type Line = readonly Inline[];

interface Found {
  readonly for: readonly Argument<string>[];
  readonly against: readonly Argument<string>[];
  readonly finding: Finding;
  readonly best: string | null;
  readonly bestPasses: 'yes' | 'open' | 'no' | null;
}

/** Each kind in a line: what it is found to be, and the best of it. */
export function kindsInShort(decision: Decision): readonly Block[] {
  if (decision.classes.length === 0) return [];
  return [
    table(
      [
        [say`Kind`, 'left'],
        [say`It`, 'left'],
        [say`The best of it`, 'left'],
      ],
      inOrderOfFinding(decision).map(({ row, index }) => [
        [words(CLASS_WORDS[row.class].title)],
        [words(foundToBe(row))],
        row.best === null
          ? []
          : row.bestPasses === 'no'
            ? say`none passes; nearest: ${arrangementName(decision, row.best, ['classes', index, 'best'])}`
            : arrangementName(decision, row.best, ['classes', index, 'best']),
      ]),
    ),
  ];
}

/** What nobody could order is not called possible, though nothing else speaks against it. */
const foundToBe = ({ finding, bestPasses }: Found): string =>
  finding === 'possible' && bestPasses === 'no' ? NOTHING_PASSES : FINDING_WORDS[finding];

/** The kind that is recommended first, then those that suit. */
function inOrderOfFinding(decision: Decision) {
  const recommended = decision.arrangements.find(({ id }) => id === decision.recommended)?.class;
  return decision.classes
    .map((row, index) => ({ row, index }))
    .toSorted(
      (a, b) =>
        Number(b.row.class === recommended) - Number(a.row.class === recommended) ||
        FINDINGS.indexOf(a.row.finding) - FINDINGS.indexOf(b.row.finding) ||
        a.index - b.index,
    );
}

/** Which kind of rotary, with what speaks for and against each: none disappears without a reason. */
export function classes(decision: Decision): readonly Block[] {
  if (decision.classes.length === 0) return [];
  return [
    heading(2, say`Which kind of rotary, and why not the others`),
    paragraph(
      say`Every kind that there is, with what the parts, the shop and this catalog say for and against it. “Nearly all” of
        the hours leaves out what adds less than ${number(['inputs', 'assume', 'kneeShare'], 'share')} of them.`,
    ),
    ...inOrderOfFinding(decision).flatMap(({ row, index }) => [
      paragraph(
        say`${strong([words(CLASS_WORDS[row.class].title)])} (${words(CLASS_WORDS[row.class].means)}): ${strong(
          [words(foundToBe(row))],
        )}.`,
      ),
      list(reasons(decision, row, ['classes', index], CLASS_ARGUMENT_WORDS)),
    ]),
  ];
}

/** The ways to five axes: on the mill that is owned, with one that is bought, built in, or one axis only. */
export function routes(decision: Decision): readonly Block[] {
  if (decision.route.routes.length === 0) return [];
  return [
    heading(2, say`Which way to five axes`),
    ...decision.route.routes.flatMap((row, index) => [
      paragraph(say`${strong([words(ROUTE_WORDS[row.route].title)])}: ${strong([words(foundToBe(row))])}.`),
      list(reasons(decision, row, ['route', 'routes', index], ROUTE_ARGUMENT_WORDS)),
    ]),
  ];
}

function reasons(
  decision: Decision,
  row: Found,
  path: Path,
  wording: Readonly<Record<string, string>>,
): readonly Line[] {
  const side = (key: 'for' | 'against'): readonly Line[] =>
    row[key].flatMap((each, index): readonly Line[] => {
      if (key === 'for' && row.against.some((other) => isOtherSide(each, other))) return [];
      const line = argumentLine(decision, wording[each.rule] ?? '', each, [...path, key, index]);
      if (!each.sure) return [say`Open: ${line}.`];
      if (each.side === 'rules out') return [say`Ruled out: ${line}.`];
      return [key === 'for' ? say`For: ${line}.` : say`Against: ${line}.`];
    });
  return [...side('against'), ...side('for'), ...best(decision, row, path)];
}

/** Two sides of one number that is open: one of them says it. */
const isOtherSide = (a: Argument<string>, b: Argument<string>): boolean =>
  !a.sure && !b.sure && `${a.number}/${a.limit}/${a.unit}` === `${b.number}/${b.limit}/${b.unit}`;

function best(decision: Decision, { best: id, bestPasses }: Found, path: Path): readonly Line[] {
  if (id === null) return [];
  const name = arrangementName(decision, id, [...path, 'best']);
  if (bestPasses === 'yes') return [say`The best of it: ${name}.`];
  return bestPasses === 'open'
    ? [say`The best of it, still open: ${name}.`]
    : [say`The nearest miss: ${name}.`];
}
