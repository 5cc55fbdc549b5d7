import { describe, expect, test } from 'vitest';
import { CLASS_RULES } from '../../../src/rules/classes/index.ts';
import { ROUTE_RULES } from '../../../src/rules/classes/routes/index.ts';
import { ROUTE_RULE_IDS } from '../../../src/rules/classes/routes/rule-ids.ts';
import type { ClassExample, Rule } from '../../../src/rules/classes/rule.ts';
import { CLASS_RULE_IDS } from '../../../src/rules/classes/rule-ids.ts';
import type { Argument, Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';
import { decisionOf } from './argued-shop.ts';

test('every id has its rule, in the order in which arguments are read', () => {
  expect(CLASS_RULES.map(({ id }) => id)).toEqual([...CLASS_RULE_IDS]);
  expect(ROUTE_RULES.map(({ id }) => id)).toEqual([...ROUTE_RULE_IDS]);
});

const said = ({ classes, route }: Decision, of: string): readonly Argument<string>[] =>
  [...classes, ...route.routes].flatMap((row) =>
    ('class' in row ? row.class : row.route) === of ? [...row.for, ...row.against] : [],
  );

interface AnyExample extends Omit<ClassExample, 'of'> {
  readonly of: string;
}
type AnyRule = Pick<Rule<string, string, never, AnyExample>, 'id' | 'about' | 'unless' | 'examples' | 'side'>;
const RULES: readonly AnyRule[] = [...CLASS_RULES, ...ROUTE_RULES];

describe.each(RULES.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  test.each(rule.examples.map((each) => [each.what, each] as const))('%s', (_what, example) => {
    const found = said(decisionOf(example.given), example.of).find((each) => each.rule === id);
    expect(found === undefined ? 'no' : found.sure ? 'yes' : 'open').toBe(example.speaks);
    if (example.number !== undefined) expectClose(Number(found?.number), example.number, { percent: 0.01 });
    if (example.limit !== undefined) expectClose(Number(found?.limit), example.limit, { percent: 0.01 });
  });

  test('has examples on both sides of its line, each about a subject of its own', () => {
    const sides = rule.examples.map(({ speaks }) => speaks);
    expect(sides).toEqual(expect.arrayContaining(['yes', 'no']));
    for (const { of } of rule.examples) expect(rule.about).toContain(of);
  });

  test('is silent only for rules that come before it', () => {
    const before = RULES.slice(0, RULES.indexOf(rule)).map((each) => each.id);
    for (const stronger of rule.unless ?? []) expect(before).toContain(stronger);
  });
});
