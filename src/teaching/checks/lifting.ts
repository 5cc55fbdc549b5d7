import type { Coupling } from '../../mechanics/lifting/coupling-multiplier.ts';
import { machine } from '../../rules/inputs/machine.ts';
import { meansInput } from '../../rules/inputs/means.ts';
import { rotary } from '../../rules/inputs/rotary.ts';
import { setting } from '../../rules/inputs/setting.ts';
import { site } from '../../rules/inputs/site.ts';
import type { Case } from '../../rules/judging/case.ts';
import { hoistThatCounts } from '../../rules/sides/lifting/hook.ts';
import { step } from '../formula/formula-source.ts';
import { given, lines, type Piece, source } from '../pieces/piece.ts';
import type { CheckFormula } from './check-formula.ts';

const COUPLED: Readonly<Record<Coupling, (height: string) => string>> = {
  good: () => '1',
  fair: (height) => `if(${height} < 75, 0.95, 1)`,
  poor: () => '0.9',
};

/** What hands may lift, after the lifting equation: the lower of the limits where the lift begins and ends. */
function byHand(index: number, coupling: Coupling): Piece {
  const i = index + 1;
  const height = (end: string): string =>
    `if(${end} > 175, 0, 1 - 0.003*abs(${end} - 75))*${COUPLED[coupling](end)}`;
  return {
    given: {
      [`x${i}`]: meansInput(index, 'hand', 'reach', 'mm', [0, 900]),
      [`v${i}`]: meansInput(index, 'hand', 'from', 'mm', [0, 1700]),
      [`y${i}`]: meansInput(index, 'hand', 'lift', 'mm', [0, 1500]),
      [`n${i}`]: meansInput(index, 'hand', 'people', '', [1, 5]),
    },
    steps: [
      step(`a${i}`, 'cm', 'hands where the lift begins', `v${i}/10`),
      step(`b${i}`, 'cm', 'hands where it ends', `(v${i} + y${i})/10`),
      step(`HM${i}`, '', 'multiplier for the reach', `if(x${i}/10 > 63, 0, 25/max(25, x${i}/10))`),
      step(
        `DM${i}`,
        '',
        'multiplier for the way of the lift',
        `if(y${i}/10 > 175, 0, if(y${i}/10 <= 25, 1, 0.82 + 4.5/(y${i}/10)))`,
      ),
      step(
        `VM${i}`,
        '',
        'multiplier for height and grip, at the worse end',
        `min(${height(`a${i}`)}, ${height(`b${i}`)})`,
      ),
      step(`W${i}`, 'kg', 'limit of one', `23*HM${i}*DM${i}*VM${i}`),
      step(
        `Q${i}`,
        'kg',
        'hands together: two share two thirds of their sum, three a half',
        `W${i}*min(3, floor(n${i}))*if(floor(n${i}) < 2, 1, if(floor(n${i}) < 3, 2/3, 1/2))`,
      ),
    ],
  };
}

function byForklift(index: number): Piece {
  const i = index + 1;
  return {
    given: {
      [`F${i}`]: meansInput(index, 'forklift', 'capacity', 'kg', [100, 10000]),
      [`C${i}`]: meansInput(index, 'forklift', 'loadCenter', 'mm', [200, 900]),
      b_a: rotary.baseAlong,
      b_c: rotary.baseAcross,
    },
    steps: [
      step(
        `c${i}`,
        'mm',
        'load center of the rotary: half of the longer side of its base',
        'max(b_a, b_c)/2',
      ),
      step(`Q${i}`, 'kg', 'forklift at that load center', `if(c${i} > C${i}, F${i}*C${i}/c${i}, F${i})`),
    ],
  };
}

function byHoist(index: number): Piece {
  const i = index + 1;
  return {
    given: {
      [`F${i}`]: meansInput(index, 'hoist', 'capacity', 'kg', [50, 10000]),
      [`k${i}`]: meansInput(index, 'hoist', 'rigging', 'kg', [0, 100]),
      [`g${i}`]: meansInput(index, 'hoist', 'legs', '', [1, 4]),
      [`s${i}`]: meansInput(index, 'hoist', 'slingAngle', '°', [10, 90]),
    },
    steps: [
      step(
        `Q${i}`,
        'kg',
        'hoist less its rigging; legs that stand too flat lift nothing',
        `if(g${i} < 2, max(0, F${i} - k${i}), if(s${i} < 30, 0, if(s${i} > 90, 0, max(0, F${i} - k${i}))))`,
      ),
    ],
  };
}

function meansOf(of: Case): readonly Piece[] {
  return (of.shop.site.lifting ?? []).map((means, index) => {
    if (means.by === 'hand') return byHand(index, means.coupling);
    return means.by === 'forklift' ? byForklift(index) : byHoist(index);
  });
}

const lift: CheckFormula = ({ of }) => {
  const means = meansOf(of);
  const each = means.map((_, index) => `Q${index + 1}`);
  return source(
    [
      given({ m_r: rotary.mass, m_p: setting.plateMass }),
      ...means,
      lines(
        step('W', 'kg', 'rotary with its plates', 'm_r + m_p'),
        step('Q', 'kg', 'most that any of the means lifts', `max(${['0', ...each].join(', ')})`),
      ),
    ],
    'W',
    'Q',
  );
};

const hookHeight: CheckFormula = ({ of }) => {
  const index = hoistThatCounts(of);
  if (index === null) throw new RangeError('no hoist counts');
  return source(
    [
      given({
        h_t: machine.tableHeight,
        h_s: site.doorSill,
        h_r: rotary.height,
        pl: setting.plateThickness,
        sl: meansInput(index, 'hoist', 'slingHeight', 'mm', [0, 2000]),
        h_h: meansInput(index, 'hoist', 'hookHeight', 'mm', [1500, 9000]),
      }),
      lines(step('h_n', 'mm', 'height needed under the hook', 'max(h_t, h_s) + h_r + pl + sl')),
    ],
    'h_n',
    'h_h',
  );
};

export const LIFTING_FORMULAS = { lift, 'hook-height': hookHeight } as const;
