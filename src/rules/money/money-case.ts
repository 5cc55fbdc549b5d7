import type { Answers } from '../../questions/answers.ts';
import { NOT_SURE, type NotSureKey } from '../../questions/ranges.ts';
import { answered, type Value } from '../judging/value.ts';

/** What the shop said of money, and what its CAM can do. */
export interface MoneyCase {
  readonly shopRate: Value;
  /** false: nobody named a rate, so what hangs on it is told, and ranked on by nobody */
  readonly hasRate: boolean;
  readonly years: Value;
  readonly interest: Value;
  readonly rigging: Value;
  readonly training: Value;
  readonly yearlyCosts: Value;
  readonly residual: Value;
  readonly cam: Answers['control']['cam'];
}

type Key = Exclude<keyof Answers['money'], 'budget' | 'plates'>;

export function moneyCase({ money, control }: Answers): MoneyCase {
  const read = (key: Key): Value => answered(money[key], pathOf(key), NOT_SURE[pathOf(key)]);
  return {
    shopRate: read('shopRate'),
    hasRate: money.shopRate !== 'unknown',
    years: read('years'),
    interest: read('interest'),
    rigging: read('rigging'),
    training: read('training'),
    yearlyCosts: read('yearlyCosts'),
    residual: read('residual'),
    cam: control.cam,
  };
}

const pathOf = (key: Key) => `money.${key}` as const satisfies NotSureKey;
