import type { Class } from '../../catalog/catalog.ts';
import type { Interval } from '../../quantities/interval.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { ClassGround } from '../../rules/classes/ground.ts';
import { CLASS_RULES } from '../../rules/classes/index.ts';
import type { ClassRule } from '../../rules/classes/rule.ts';
import { STRENGTH } from '../../rules/classes/rules/strength.ts';
import type { GivenNumber } from '../formula/printed-formula.ts';
import type { Lesson } from '../lessons/lesson.ts';
import type { ReadyLesson } from '../lessons/run-lesson.ts';
import { type ChoiceCase, SPEAKS_IN_FORMULAS } from '../rules/choices.ts';
import { classGround } from '../rules/rule-ground.ts';
import { CLASS_RULE_LESSONS } from '../words/class-rules.ts';
import { stepsThatHold } from './from-steps.ts';
import type { SheetFormula } from './sheet-formula.ts';

/**
 * What is found of a kind of rotary, from numbers that can be given: of each rule that can turn the finding its number and its
 * line. Null: the mix has several parts, so that each number is a matter of all of them, and no rule is asked for; or one is not
 * known.
 */
export function kindFormula(kind: Class, ready: ReadyLesson): SheetFormula | null {
  const { lesson, standing } = ready;
  const { answers } = lesson;
  if (answers.parts.length !== 1 && !asksOneRule(lesson)) return null;
  const ground = classGround(kind, answers, standing);
  if (ground.judged.length === 0 && !asksOneRule(lesson)) return null;
  const compared = CLASS_RULES.filter(({ about }) => about.includes(kind))
    .filter((rule) => canTurn(rule) || isAsked(rule, lesson))
    .flatMap((rule) => comparedBy(rule, ground));
  if (compared.some(({ number, limit }) => !isKnown(number) || !isKnown(limit))) return null;
  const kept = compared.filter((each) => !compared.some((other) => saysNoMoreThan(each, other)));
  const inOrder = kept.toSorted(
    (a, b) => Number(b.rule.side === 'rules out') - Number(a.rule.side === 'rules out'),
  );
  const all = inOrder.map(({ rule, number, limit }, index) => {
    const { number: n, limit: l } = CLASS_RULE_LESSONS[rule.id];
    // the same under the same words is given once
    const given = (letter: string, words: string, { low }: Interval): GivenNumber => ({
      symbol: `${letter}${index + 1}`,
      words,
      unit: rule.unit,
      input: `kinds[${kind}].${words}`,
      value: low,
    });
    return { rule, number: given('N', n, number), limit: given('L', l, limit) };
  });
  return {
    symbols: all.flatMap(({ number, limit }) => [number, limit]),
    definitions: [],
    steps: [],
    asked: '',
    unit: '',
    compared: null,
    from: Object.fromEntries(
      all.flatMap(({ rule, number, limit }) => [
        ...fromSteps(number, [...stepsAsking(number, ready), ...held(rule.id, number, ready)]),
        ...fromSteps(limit, stepsAsking(limit, ready)),
      ]),
    ),
    findings: all.map(
      ({ rule: { id, when, side }, number, limit }): ChoiceCase => ({
        rule: `${number.symbol} ${SPEAKS_IN_FORMULAS[when]} ${limit.symbol}`,
        words: CLASS_RULE_LESSONS[id].title,
        comesTo: side === 'rules out' ? 'ruled out' : 'possible',
      }),
    ),
  };
}

/** Where the steps before are about one rule, the others are given. */
const asksOneRule = ({ steps }: Lesson): boolean => steps.some(({ asked }) => asked.kind === 'rule');

const isAsked = ({ id }: ClassRule, { steps }: Lesson): boolean =>
  steps.some(({ asked }) => asked.kind === 'rule' && asked.rule === id && id === 'catalog-none');

/** That there is one at all is said by the question. */
const canTurn = ({ id, side, weighty }: ClassRule): boolean =>
  (side === 'rules out' || weighty === true) && id !== 'catalog-none';

interface Compared {
  readonly rule: ClassRule;
  readonly number: Interval;
  readonly limit: Interval;
}

function comparedBy(rule: ClassRule, ground: ClassGround): readonly Compared[] {
  const weighed = rule.number(ground);
  return weighed === null ? [] : [{ rule, number: weighed.value, limit: rule.limit(ground) }];
}

const isKnown = ({ low, high }: Interval): boolean => low === high && Number.isFinite(low);

/** Where the same numbers rule it out already. */
const saysNoMoreThan = (one: Compared, other: Compared): boolean =>
  one.rule.unless?.includes(other.rule.id) === true &&
  other.rule.side === 'rules out' &&
  one.number.low === other.number.low &&
  one.limit.low === other.limit.low;

/** The verdicts that say the number of a rule, where the mix is one part: null, all of them. Asked for they are never given, held or not. */
const VERDICTS_FOR: Readonly<Partial<Record<ClassRule['id'], ReadonlySet<CheckId> | null>>> = {
  'none-passes': null,
  'strength-beyond': STRENGTH,
  'strength-short': STRENGTH,
};

function held(id: ClassRule['id'], { value }: GivenNumber, ready: ReadyLesson): readonly number[] {
  const among = VERDICTS_FOR[id];
  if (among === undefined) return [];
  const is = Math.min(1, value);
  return ready.lesson.answers.parts.flatMap(({ name }) =>
    stepsThatHold(ready, name, ready.lesson.on, is, among),
  );
}

const ASKED_FOR: ReadonlySet<string> = new Set(['number', 'rule number']);

/** The step that asks for a number, numbered from 1: there it is not given. */
function stepsAsking({ unit, value }: GivenNumber, { lesson, keys }: ReadyLesson): readonly number[] {
  const asked = keys.findIndex(
    (key, index) =>
      ASKED_FOR.has(lesson.steps[index]?.asked.kind ?? '') &&
      key.kind === 'number' &&
      key.unit === unit &&
      Math.abs(key.value - value) <= 1e-9 * Math.abs(value),
  );
  return asked < 0 ? [] : [asked + 1];
}

const fromSteps = ({ symbol }: GivenNumber, steps: readonly number[]) =>
  steps.length === 0 ? [] : [[symbol, steps] as const];
