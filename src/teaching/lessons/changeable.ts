import type { Part } from '../../questions/answers.ts';
import { type AssumptionName, assumed } from '../../questions/assumptions.ts';
import { wordedPath } from '../../report/value-name.ts';
import { valueUnit, valueWords } from '../../report/value-words.ts';
import { type Ground, type Keys, keysOf, numberAt } from '../../rules/flips/value-at.ts';
import { movableAnswers } from '../../rules/stability/movable-answers.ts';
import type { Lesson } from './lesson.ts';
import type { ReadyLesson } from './run-lesson.ts';
import type { StepKey } from './step-key.ts';

/** A given number that can be tried otherwise: an answer, a value of the catalog, or an assumption. */
export interface Changeable {
  /** as the formula calls it; empty where it stands in none */
  readonly symbol: string;
  readonly words: string;
  readonly unit: string;
  readonly value: number;
  readonly keys: Keys;
}

/**
 * What can be changed to see what becomes of a step: of a step with a formula its given numbers, otherwise every number of the
 * answers and the prices. Numbers that follow from others, as the mass of plates that are chosen, are left out.
 */
export function changeableOf(key: StepKey, { lesson, decision }: ReadyLesson): readonly Changeable[] {
  const ground = { answers: lesson.answers, catalog: decision.inputs.catalog };
  const { worked } = key;
  if (worked === null) return [...ofAnswers(ground), ...ofPrices(lesson, ground)];
  return worked.formula.symbols.flatMap(({ symbol, words, unit, input }) => {
    const value = worked.values[symbol];
    const keys = value === undefined ? null : placeOf(input, value, ground);
    return value === undefined || keys === null ? [] : [{ symbol, words, unit, value, keys }];
  });
}

/** Where a number stands that can be changed, by the path that checks name it by; null: it follows from others. */
function placeOf(path: string, value: number, ground: Ground): Keys | null {
  if (path.startsWith('assume.')) return ['answers', ...path.split('.')];
  const keys = keysOf(path, ground);
  // a range of a catalog row is named as a whole: of a tilt from one end to the other it is the greatest
  for (const each of keys === null ? [] : [keys, [...keys, 1], [...keys, 0]])
    if (numberAt(ground, each) === value) return each;
  const lifting = /^shop\.lifting\.(\w+)\.(\w+)$/.exec(path);
  if (lifting !== null) {
    const all = ground.answers.shop.lifting;
    const index = all === 'unknown' ? -1 : all.findIndex(({ by }) => by === lifting[1]);
    return index < 0 ? null : held(['answers', 'shop', 'lifting', index, lifting[2] ?? ''], value, ground);
  }
  const part = ground.answers.parts.findIndex(({ name }) => path.startsWith(`parts[${name}].`));
  const family = ground.answers.parts[part];
  return family === undefined
    ? null
    : ofPart(path.slice(path.lastIndexOf('.') + 1), value, family, part, ground);
}

/** The angle of a side that is cut, and the safety on its cut, are named as numbers of the part. */
function ofPart(name: string, value: number, family: Part, part: number, ground: Ground): Keys | null {
  if (name === 'brakeSafety') {
    const all = assumed(ground.answers.assume);
    const which = (['brakeSafety', 'brakeSafetyInterrupted'] satisfies AssumptionName[]).find(
      (each) => all[each] === value,
    );
    return which === undefined ? null : ['answers', 'assume', which];
  }
  if (!['tilt', 'slant', 'undercut'].includes(name) || family.approaches === 'unknown') return null;
  for (const [index, each] of family.approaches.entries())
    for (const angle of typeof each === 'string' ? [] : Object.keys(each)) {
      const keys = held(['answers', 'parts', part, 'approaches', index, angle], value, ground);
      if (keys !== null) return keys;
    }
  return null;
}

const held = (keys: Keys, value: number, ground: Ground): Keys | null =>
  numberAt(ground, keys) === value ? keys : null;

const ofAnswers = ({ answers }: Ground): readonly Changeable[] =>
  movableAnswers(answers).map(({ answer, keys, at }) => {
    const part = keys[1] === 'parts' ? answers.parts[Number(keys[2])]?.name : undefined;
    const named = wordedPath(answer, answers);
    const words = valueWords(named)?.words ?? answer;
    return {
      symbol: '',
      words: part === undefined ? words : `${words} (${part})`,
      unit: valueUnit(named),
      value: at,
      keys,
    };
  });

function ofPrices({ on }: Lesson, ground: Ground): readonly Changeable[] {
  const [machine = '', rest = ''] = on.split('+');
  const [rotary = ''] = rest.split('/');
  return [`machines[${machine}].price`, `rotaries[${rotary}].price`].flatMap((path) => {
    const keys = keysOf(path, ground);
    const value = keys === null ? null : numberAt(ground, keys);
    if (keys === null || value === null) return [];
    const whose = path.startsWith('machines') ? 'price of the machine' : 'price of the rotary';
    return [{ symbol: '', words: whose, unit: 'money', value, keys }];
  });
}
