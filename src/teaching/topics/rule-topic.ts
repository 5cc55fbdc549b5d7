import { yearlyHours } from '../../mechanics/money/yearly-hours.ts';
import type { Part } from '../../questions/answers.ts';
import { filled } from '../../report/arguments.ts';
import { type Block, heading, paragraph, table } from '../../report/blocks/block.ts';
import { codeData, data, number, say, words } from '../../report/blocks/inline.ts';
import type { Path } from '../../report/blocks/path.ts';
import { CLASS_ARGUMENT_WORDS, ROUTE_ARGUMENT_WORDS } from '../../report/wording/class-arguments.ts';
import { CLASS_RULES } from '../../rules/classes/index.ts';
import type { RouteRule } from '../../rules/classes/routes/index.ts';
import { ROUTE_RULES } from '../../rules/classes/routes/index.ts';
import type { ClassRule, Speaks } from '../../rules/classes/rule.ts';
import { decide } from '../../rules/decide.ts';
import type { Argument, ArgumentSide, Decision } from '../../rules/decision.ts';
import { isFiveAxis } from '../../rules/facts/part-facts.ts';
import { standingOf } from '../../rules/standing.ts';
import { decisionOfRule, shopOfRule } from '../examples/example-decision.ts';
import { at, type Explained, rootOf } from '../explained.ts';
import { workOut } from '../formula/work-out.ts';
import { ruleGround } from '../rules/rule-ground.ts';
import { workedRule } from '../rules/worked-rule.ts';
import { CLASS_RULE_LESSONS } from '../words/class-rules.ts';
import { ROUTE_RULE_LESSONS } from '../words/route-rules.ts';
import type { RuleLesson } from '../words/rule-lesson.ts';
import { givenTable, shownFormula, wayBlocks } from './formula-blocks.ts';
import type { Topic } from './topic.ts';

/** Every rule of the class, in the order in which arguments are read. */
export const classRuleTopics = (): readonly Topic[] =>
  CLASS_RULES.map((rule) => ({
    kind: 'class rule',
    id: rule.id,
    title: CLASS_RULE_LESSONS[rule.id].title,
    explain: () =>
      explained(
        rule,
        CLASS_RULE_LESSONS[rule.id],
        CLASS_ARGUMENT_WORDS[rule.id],
        'a rule of the kind of rotary',
        classWay(rule),
      ),
  }));

/** Every rule of the way to five axes. */
export const routeRuleTopics = (): readonly Topic[] =>
  ROUTE_RULES.map((rule) => ({
    kind: 'route rule',
    id: rule.id,
    title: ROUTE_RULE_LESSONS[rule.id].title,
    explain: () =>
      explained(
        rule,
        ROUTE_RULE_LESSONS[rule.id],
        ROUTE_ARGUMENT_WORDS[rule.id],
        'a rule of the way to five axes',
        routeWay(rule),
      ),
  }));

type AnyRule = ClassRule | RouteRule;

/** How a number is held against its line. */
export const SPEAKS_SIGNS: Readonly<Record<Speaks, string>> = {
  below: '<',
  'at least': '≥',
  above: '>',
  'at most': '≤',
};

/** What a rule that speaks does for its kind. */
export const SIDE_WORDS: Readonly<Record<ArgumentSide, string>> = {
  for: 'it speaks for it',
  against: 'it speaks against it',
  'rules out': 'it rules it out',
};

function spokenExample<Example extends { readonly speaks: string }>(rule: {
  readonly id: string;
  readonly examples: readonly Example[];
}): Example {
  const example = rule.examples.find(({ speaks }) => speaks === 'yes');
  if (example === undefined) throw new Error(`no example in which ${rule.id} speaks`);
  return example;
}

/** The argument of an example in which the rule speaks, and where it stands in its decision. */
export function spoken(rule: AnyRule): {
  readonly decision: Decision;
  readonly argument: Argument<string>;
  readonly path: Path;
} {
  const example = spokenExample<AnyRule['examples'][number]>(rule);
  const decision = decisionOfRule(example.given);
  const lists = [
    ...decision.classes.map((each, index) => ({
      subject: each.class as string,
      each,
      at: ['classes', index] as Path,
    })),
    ...decision.route.routes.map((each, index) => ({
      subject: each.route as string,
      each,
      at: ['route', 'routes', index] as Path,
    })),
  ];
  for (const { subject, each, at: place } of lists) {
    if (subject !== example.of) continue;
    for (const side of ['for', 'against'] as const)
      for (const [index, argument] of each[side].entries())
        if (argument.rule === rule.id) return { decision, argument, path: [...place, side, index] };
  }
  throw new Error(`${rule.id} is silent in its own example`);
}

/** How a rule comes to its number in its example: what the blocks look up, and the blocks. */
interface ShownWay {
  readonly worked: object;
  readonly blocks: readonly Block[];
}

const NO_WAY: ShownWay = { worked: {}, blocks: [] };

/** On the ground of its example, as an exercise works it out. */
function classWay(rule: ClassRule): ShownWay {
  const example = spokenExample(rule);
  const { answers, catalog } = shopOfRule(example.given);
  const decision = decide(answers, catalog, { all: true });
  const worked = workedRule(rule, ruleGround(example.of, answers, standingOf(answers, catalog), decision));
  if (worked === null || worked.formula.steps.length === 0) return NO_WAY;
  const shown = shownFormula(worked.formula, worked.values, worked.worked);
  return { worked: shown, blocks: [givenTable(shown), ...wayBlocks(shown)] };
}

/** A share of the hours, family by family. */
function routeWay(rule: RouteRule): ShownWay {
  const { share } = ROUTE_RULE_LESSONS[rule.id];
  if (share === undefined) return NO_WAY;
  const { decision, argument } = spoken(rule);
  const { rows, shown: formula } = hoursOf(decision, argument, share);
  const shown = shownFormula(...formula);
  return { worked: { ...shown, hours: rows }, blocks: [hoursTable(rows), ...wayBlocks(shown)] };
}

function explained(
  rule: AnyRule,
  lesson: RuleLesson,
  wording: string,
  what: string,
  way: ShownWay,
): Explained {
  const { decision, argument, path } = spoken(rule);
  const root = rootOf(decision, {
    ...way.worked,
    id: rule.id,
    source: rule.source,
    rule: `N ${SPEAKS_SIGNS[rule.when]} L`,
  });
  return {
    root,
    blocks: [
      heading(1, [words(lesson.title)]),
      paragraph(say`${codeData(at('id'))}, ${words(what)}.`),
      paragraph([words(lesson.plain)]),
      heading(2, say`The rule`),
      paragraph(
        say`${codeData(at('rule'))}: then ${words(SIDE_WORDS[rule.side])}. N: ${words(lesson.number)}. L: ${words(lesson.limit)}.`,
      ),
      heading(2, say`An example, worked out`),
      ...way.blocks,
      paragraph(
        say`N is ${number([...path, 'number'], rule.unit)}, L is ${number([...path, 'limit'], rule.unit)}: ${filled(root, wording, argument, path)}.`,
      ),
      heading(2, say`Sketch`),
      paragraph(say`None. It is an argument, not a size.`),
      heading(2, say`The usual mistake`),
      paragraph([words(lesson.mistake)]),
      heading(2, say`Where it comes from`),
      paragraph(say`${data(at('source'))}.`),
    ],
  };
}

interface HoursRow {
  readonly part: string;
  readonly hours: number;
  readonly counted: string;
}

/** The hours that a share is made of, family by family. */
export function hoursOf(
  decision: Decision,
  { parts }: Pick<Argument<string>, 'parts'>,
  share: 'named' | 'others',
) {
  const rows = decision.inputs.answers.parts.filter(isFiveAxis).map((part): HoursRow => {
    const counts = parts.includes(part.name) === (share === 'named');
    return { part: part.name, hours: hoursOfPart(part), counted: counts ? 'yes' : 'no' };
  });
  const sum = (of: readonly HoursRow[]): number => of.reduce((total, { hours }) => total + hours, 0);
  const values = { H_n: sum(rows.filter(({ counted }) => counted === 'yes')), H: sum(rows) };
  const formula = {
    symbols: [],
    definitions: [],
    steps: [{ gives: 'N', words: 'share of the hours', unit: 'share', formula: 'H_n/H' }],
    need: 'N',
    have: 'H',
    sense: 'at-most',
    unit: 'share',
  } as const;
  return { rows, shown: [formula, values, workOut(formula, values)] as const };
}

function hoursOfPart({ yearly }: Part): number {
  const plain = (value: unknown): number => (typeof value === 'number' ? value : Number.NaN);
  return yearlyHours({
    quantity: plain(yearly.quantity),
    lots: plain(yearly.lots),
    setups: plain(yearly.setups),
    setupMinutes: plain(yearly.setupMinutes),
    cycleMinutes: plain(yearly.cycleMinutes),
    handlingMinutes: plain(yearly.handlingMinutes),
  });
}

const hoursTable = (rows: readonly HoursRow[]): Block =>
  table(
    [
      [say`Family`, 'left'],
      [say`Hours a year`, 'right'],
      [say`Counted`, 'left'],
    ],
    rows.map((_, index) => [
      [data(at('hours', index, 'part'))],
      [number(at('hours', index, 'hours'), 'h')],
      [data(at('hours', index, 'counted'))],
    ]),
  );
