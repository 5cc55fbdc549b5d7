import type { Decision } from '../../rules/decision.ts';
import { type Block, type Cell, figureBlock, heading, list, paragraph, table } from '../blocks/block.ts';
import { enumerate, type Inline, say, strong, verdictSign, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { type ArrangementAt, arrangementAt, checksAt, firstOfEach, worstFirst } from '../checks-at.ts';
import { bayPlan } from '../figures/bay-plan.ts';
import { SITE_ROWS, SITE_WORDS, type SiteRow } from '../wording/site.ts';
import { siteAnswers } from './site-answers.ts';
import { contendersNeeds } from './site-contenders.ts';
import { siteNeeds } from './site-needs.ts';

/** Room to write on paper. */
const ROOM = say`……………………`;

/** What to measure in the building, whom to ask, and what the arrangement asks of it. */
export function siteSheet(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  return [
    heading(2, say`Site sheet: what to measure, and whom to ask`),
    paragraph(
      say`Take this sheet through the building before anything is ordered. What is measured goes into the answers, and
        then the decision is made again. Nothing here approves a floor, a supply or a lift: that is for the trades that are
        named, and for local code.`,
    ),
    ...(decision.outcome === 'none'
      ? [
          paragraph(say`Nothing is recommended as things stand, so there is nothing yet to hold
      the building against. The sheet is here for what comes next.`),
        ]
      : []),
    at === undefined ? plainSheet(decision) : sheetFor(decision, at),
    ...(at === undefined ? [] : figureBlock(bayPlan(decision, at))),
    measuring(),
    ...contendersNeeds(decision),
  ];
}

function sheetFor(decision: Decision, at: ArrangementAt): Block {
  const said = siteAnswers(decision);
  const needs = siteNeeds(decision, at);
  const owned = decision.inputs.answers.shop.machine === at.arrangement.machine;
  return table(
    [
      [say`What`, 'left'],
      [say`The answers say`, 'left'],
      [say`What is recommended needs`, 'left'],
      [say`How it stands`, 'left'],
      [say`Who confirms`, 'left'],
      [say`Measured`, 'left'],
    ],
    SITE_ROWS.map((row) => [
      [words(SITE_WORDS[row].title)],
      said[row],
      needs?.[row] ?? [],
      standsAt(at, row, owned && staysAsItIs(row, at)),
      [words(SITE_WORDS[row].who)],
      ROOM,
    ]),
  );
}

/** Of a mill that stands there already nothing has to be looked at here, unless it becomes higher. */
const staysAsItIs = (row: SiteRow, { arrangement }: ArrangementAt): boolean =>
  row === 'bay' ||
  row === 'doorway' ||
  (row === 'ceiling' && !arrangement.clearance.includes('column-spacer'));

/** What its checks say, where there are any. */
function standsAt(at: ArrangementAt, row: SiteRow, stays: boolean): Cell {
  const all = checksAt(at).filter(({ result }) => SITE_WORDS[row].checks.includes(result.check));
  // over its parts the worst of each check: that is what the building has to take
  const found = firstOfEach(worstFirst(all));
  if (found.length === 0) return stays ? say`nothing to confirm` : say`to be confirmed`;
  return enumerate(
    found.map((each): readonly Inline[] => {
      const { need, have } = checkNumbers(each);
      return say`${verdictSign(each.result.verdict)}: needed ${need}, there is ${have}`;
    }),
  );
}

function plainSheet(decision: Decision): Block {
  const said = siteAnswers(decision);
  return table(
    [
      [say`What`, 'left'],
      [say`The answers say`, 'left'],
      [say`Who confirms`, 'left'],
      [say`Measured`, 'left'],
    ],
    SITE_ROWS.map((row) => [[words(SITE_WORDS[row].title)], said[row], [words(SITE_WORDS[row].who)], ROOM]),
  );
}

const measuring = (): Block =>
  list(
    SITE_ROWS.map((row) => {
      const { title, measure } = SITE_WORDS[row];
      return say`${strong([words(title)])}: ${words(measure)}`;
    }),
  );
