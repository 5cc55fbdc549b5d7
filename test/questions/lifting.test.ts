import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/questions/answers.ts';
import { isBasicFact } from '../../src/questions/basic-facts.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import type { Question, Value } from '../../src/questions/question.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { readReply } from '../../src/questions/read-reply.ts';
import { answersToFile } from '../../src/questions/write-answers.ts';

function question(id: string): Question {
  const found = QUESTIONS.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
}
const answered = (...pairs: readonly (readonly [id: string, value: Value])[]): Answers =>
  pairs.reduce<Answers>((answers, [id, value]) => question(id).set(answers, 0, value), {
    ...blankAnswers('EUR'),
    parts: [blankPart('Lock gate hinge')],
  });
const applies = (answers: Answers, id: string) => question(id).applies(answers, 0);

const TWO_HOISTS = `format: fivesides-answers/1
units: mm
parts: [{ name: Lock gate hinge }]
shop:
  lifting:
    - { by: hoist, capacity: 250, legs: 1 }
    - { by: forklift, capacity: 1500, loadCenter: 500 }
    - { by: hoist, capacity: 2 t }
`;
function twoHoists(): Answers {
  const reading = readAnswers('a.yaml', TWO_HOISTS);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.value.answers;
}
const lifting = ({ shop }: Answers) =>
  shop.lifting === 'unknown' ? [] : shop.lifting.map(({ by, capacity }) => [by, capacity]);

describe('means of lifting', () => {
  test('are asked about one by one, and only those that are there', () => {
    const answers = answered(['lifting-means', ['hand', 'hoist']]);
    expect(applies(answers, 'hook-height')).toBe(true);
    expect(applies(answers, 'door-sill')).toBe(true);
    expect(applies(answers, 'lifting-people')).toBe(true);
    expect(applies(answers, 'forklift-capacity')).toBe(false);
    expect(applies(answered(['lifting-means', 'unknown']), 'hook-height')).toBe(false);
  });

  test('none is an answer of its own, and no lack of one', () => {
    const none = answered(['lifting-means', ['none']]);
    expect(none.shop.lifting).toEqual([]);
    expect(question('lifting-means').get(none, 0)).toEqual(['none']);
    const { text } = answersToFile(none, { units: 'mm' });
    const reading = readAnswers('a.yaml', text);
    expect(reading.ok && reading.value.answers.shop.lifting).toEqual([]);
  });

  test('none beside others is refused with what is accepted', () => {
    const context = { units: 'mm', offer: { machines: [] } } as const;
    const { field } = question('lifting-means');
    expect(readReply(field, 'hoist, none', context)).toEqual({
      ok: false,
      why: '"none" stands alone: type it, or the others without it, or "not sure".',
    });
    expect(readReply(field, 'none', context)).toEqual({ ok: true, value: ['none'] });
    expect(() => question('lifting-means').set(answered(), 0, ['none', 'hand'])).toThrow(TypeError);
  });

  test('keep what is known of them when another comes in', () => {
    const one = answered(['lifting-means', ['hoist']], ['hoist-capacity', 500]);
    const two = question('lifting-means').set(one, 0, ['hand', 'hoist']);
    expect(lifting(two)).toEqual([
      ['hand', 'unknown'],
      ['hoist', 500],
    ]);
  });

  test('of a file with two hoists all stay; the first is spoken of', () => {
    const answers = twoHoists();
    expect(question('lifting-means').get(answers, 0)).toEqual(['hoist', 'forklift']);
    expect(question('hoist-capacity').get(answers, 0)).toBe(250);
    const changed = question('hoist-capacity').set(answers, 0, [300, 400]);
    expect(lifting(changed)).toEqual([
      ['hoist', [300, 400]],
      ['forklift', 1500],
      ['hoist', 2000],
    ]);
  });

  test.each([
    [1, false],
    [2, true],
    ['unknown', true],
  ] as const)('a sling of %s legs hangs at an angle: %s', (legs, expected) => {
    const answers = answered(['lifting-means', ['hoist']], ['sling-legs', legs]);
    expect(applies(answers, 'sling-angle')).toBe(expected);
  });
});

describe('what is asked of whom', () => {
  const COMES_IN = ['bay', 'doorway-width', 'doorway-height', 'phases', 'volts', 'kva'];

  test.each(COMES_IN)('%s applies to whoever owns a mill too: another machine may turn out better', (id) => {
    expect(applies(answered(['own-mill', 'none']), id)).toBe(true);
    expect(applies(answered(['own-mill', 'rowan']), id)).toBe(true);
  });

  test.each(['doorway-width', 'doorway-height', 'ceiling'])(
    '%s is a basic fact only without a mill',
    (id) => {
      expect(isBasicFact(question(id), answered(['own-mill', 'none']))).toBe(true);
      expect(isBasicFact(question(id), answered(['own-mill', 'rowan']))).toBe(false);
    },
  );

  test('the ceiling is asked for either: a spacer makes an owned mill higher', () => {
    expect(applies(answered(['own-mill', 'rowan']), 'ceiling')).toBe(true);
  });

  test.each([
    ['vise-width', 'vises-wanted'],
    ['vise-height', 'vises-wanted'],
    ['swap', 'switches-per-week'],
    ['air-pressure', 'air-flow'],
  ])('%s is not asked where %s is none', (id, first) => {
    expect(applies(answered([first, 0]), id)).toBe(false);
    expect(applies(answered([first, 2]), id)).toBe(true);
    expect(applies(answered([first, 'unknown']), id)).toBe(true);
  });

  test('one phase and three are kept as numbers', () => {
    expect(answered(['phases', 'one']).shop.power.phases).toBe(1);
    expect(answered(['phases', 'three']).shop.power.phases).toBe(3);
    expect(answered(['phases', 'unknown']).shop.power.phases).toBe('unknown');
  });

  test('the floor is asked for in the units that its papers have', () => {
    const ask = (units: 'mm' | 'inch') => question('floor-rating').ask({ part: '', units, currency: 'EUR' });
    expect(ask('mm')).toContain('square meter');
    expect(ask('inch')).toContain('square foot');
  });
});
