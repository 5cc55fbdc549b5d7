import type { Bounded, Decision } from '../../rules/decision.ts';
import { enumerate, type Inline, number, say, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import {
  type ArrangementAt,
  type CheckAt,
  checksAt,
  firstOfEach,
  ofCoveredParts,
  tightestChecks,
} from '../checks-at.ts';
import { firstNames } from '../first-names.ts';
import { partName } from '../names.ts';
import { valueName } from '../value-name.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { MEASURE_TO_TAKE_WORDS } from '../wording/measures-to-take.ts';

type Line = readonly Inline[];
type Risk = (decision: Decision, at: ArrangementAt) => readonly Line[];

const SHOWN = 3;
const MOST_NAMES = 3;

const high = (value: Bounded): number | null => (Array.isArray(value) ? value[1] : value) as number | null;
const low = (value: Bounded): number | null => (Array.isArray(value) ? value[0] : value) as number | null;

/** The three that weigh most, in this order: what could be lost first, what can be measured last. */
export const risks = (decision: Decision, at: ArrangementAt): readonly Line[] =>
  [
    worth,
    unsettledPrice,
    deciding,
    openShop,
    building,
    notMade,
    conditions,
    tightest,
    fromCatalogs,
    estimates,
  ]
    .flatMap((risk: Risk) => risk(decision, at))
    .slice(0, SHOWN);

const worth: Risk = (_decision, { arrangement: { money }, path }) => {
  const years = number([...path, 'money', 'terms', 'years'], 'years');
  if (!money.terms.ranked)
    return [say`Nobody named what an hour of work is sold for, so what it brings is hardly known.`];
  const best = high(money.netPresentValue);
  if (best !== null && best < 0)
    return [
      say`It does not bring back its price within the ${years} that are looked at. Recommended means that it suits the work
        best, not that it pays.`,
    ];
  const worst = low(money.netPresentValue);
  return worst === null || worst < 0
    ? [say`It may not bring back its price within the ${years} that are looked at.`]
    : [];
};

const unsettledPrice: Risk = (_decision, at) => {
  if (checksAt(at).some(({ result: { check, verdict } }) => check === 'budget' && verdict === 'open'))
    return [say`It is not settled whether the budget pays for all of it.`];
  return typeof at.arrangement.measures.price === 'number'
    ? []
    : [say`The price is not settled: a seller has not stated all of it.`];
};

/** Not known, and it could turn the recommendation round. */
const deciding: Risk = (decision) => {
  const names = decision.unknowns.flatMap(({ answer, decides }, index) =>
    decides ? [valueName(decision, answer, ['unknowns', index, 'answer'])] : [],
  );
  return names.length === 0
    ? []
    : [say`Not known, and it could change the recommendation: ${enumerate(firstNames(names, MOST_NAMES))}.`];
};

/** Checks of the building that are open, each once. */
const openInBuilding = (at: ArrangementAt): readonly CheckAt[] =>
  firstOfEach(
    checksAt(at).filter(
      ({ result }) => result.stage === 'shop' && result.check !== 'budget' && result.verdict === 'open',
    ),
  );

const openShop: Risk = (_decision, at) => {
  const open = openInBuilding(at);
  return open.length === 0
    ? []
    : [
        say`Not settled in the building: ${enumerate(open.map(({ result }) => words(CHECK_WORDS[result.check].name)))}. See
          the site sheet.`,
      ];
};

/** What the answers do not know of the building, where no check says so already. */
const building: Risk = ({ inputs: { answers } }, at) => {
  if (openInBuilding(at).length > 0) return [];
  const { bay, ceiling, doorway, floorRating, power, lifting } = answers.shop;
  const unknown = [
    floorRating === 'unknown' ? say`what the floor carries` : null,
    power.kVA === 'unknown' || power.volts === 'unknown' || power.phases === 'unknown'
      ? say`what the electric supply gives`
      : null,
    [...bay, ceiling].includes('unknown') ? say`the room that there is` : null,
    doorway.width === 'unknown' || doorway.height === 'unknown' ? say`the doorway` : null,
    lifting === 'unknown' ? say`what there is to lift with` : null,
  ].filter((each) => each !== null);
  return unknown.length === 0
    ? []
    : [say`Not known of the building: ${enumerate(unknown)}. See the site sheet.`];
};

const notMade: Risk = (decision, { arrangement, path }) => {
  const names = Object.entries(arrangement.parts)
    .filter(([, verdict]) => verdict === 'fails')
    .map(([name]) => [partName(decision, name, [...path, 'parts', name])]);
  return names.length === 0
    ? []
    : [
        say`If ${enumerate(firstNames(names, MOST_NAMES), 'or')} become${words(names.length === 1 ? 's' : '')} more of the
        work, this is the wrong purchase.`,
      ];
};

/** What it holds only with. */
const conditions: Risk = (_decision, at) => {
  const measures = new Set(
    ofCoveredParts(at).flatMap(({ result }) =>
      result.verdict === 'holds if' && result.easing !== null ? [result.easing.measure] : [],
    ),
  );
  if (measures.size === 0) return [];
  const titles = [...measures]
    .filter((each) => each !== 'stays-on')
    .map((each) => [words(MEASURE_TO_TAKE_WORDS[each].title.toLowerCase())]);
  const only =
    titles.length === 0
      ? []
      : say`It works only with this, so it must not be left out to save money: ${enumerate(titles)}.`;
  if (!measures.has('stays-on')) return [only];
  const stays = say`Nothing in the shop is sure to lift the rotary, so it stays on the machine.`;
  return [only.length === 0 ? stays : say`${only} ${stays}`];
};

const tightest: Risk = (_decision, at) => {
  const [first] = tightestChecks(at, 1);
  if (first === undefined) return [];
  const { margin } = checkNumbers(first);
  return [
    say`The tightest fit is ${words(CHECK_WORDS[first.result.check].name)}: ${margin} to spare. ${words(
      first.result.stage === 'shop'
        ? 'Measure the building again, and have the seller confirm the machine’s numbers.'
        : 'The seller has to confirm the numbers behind it.',
    )}`,
  ];
};

const fromCatalogs: Risk = () => [say`Prices and sizes are from catalogs. No seller has confirmed them yet.`];

const estimates: Risk = () => [
  say`All of this is reckoned, not tried: a first part of your own shows whether it holds.`,
];
