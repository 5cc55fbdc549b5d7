import { machine } from '../../rules/inputs/machine.ts';
import { part } from '../../rules/inputs/part.ts';
import { rotary } from '../../rules/inputs/rotary.ts';
import { assume, shop as money, setting } from '../../rules/inputs/setting.ts';
import { site } from '../../rules/inputs/site.ts';
import { standsAlready } from '../../rules/sides/owned.ts';
import { step } from '../formula/formula-source.ts';
import { called, given, lines, overAll, source } from '../pieces/piece.ts';
import type { CheckFormula } from './check-formula.ts';

const bay: CheckFormula = ({ comparison }) => {
  const fold = comparison.what === 'longer side' ? 'max' : 'min';
  const words = `${comparison.what} of`;
  return source(
    [
      given({
        x: machine.footprintX,
        s_l: machine.serviceLeft,
        s_r: machine.serviceRight,
        y: machine.footprintY,
        s_f: machine.serviceFront,
        s_b: machine.serviceRear,
        b_1: site.bayOne,
        b_2: site.bayOther,
      }),
      lines(
        step('x_s', 'mm', 'width with service space', 'x + s_l + s_r'),
        step('y_s', 'mm', 'depth with service space', 'y + s_f + s_b'),
        step('l_n', 'mm', `${words} machine and service space`, `${fold}(x_s, y_s)`),
        step('l_b', 'mm', `${words} the bay`, `${fold}(b_1, b_2)`),
      ),
    ],
    'l_n',
    'l_b',
  );
};

const ceiling: CheckFormula = () =>
  source(
    [
      given({
        h_m: machine.standsHigh,
        h_s: setting.heightened,
        room: assume.ceilingRoom,
        h_c: site.ceiling,
      }),
      lines(step('h_n', 'mm', 'machine with spacer and room above', 'h_m + h_s + room')),
    ],
    'h_n',
    'h_c',
  );

const doorway: CheckFormula = ({ comparison }) =>
  comparison.what.startsWith('width')
    ? source(
        [
          given({ x: machine.shipsLong, y: machine.shipsWide, side: assume.doorSide, w_d: site.doorWidth }),
          lines(step('w_n', 'mm', 'narrower side as shipped, with room beside it', 'min(x, y) + side')),
        ],
        'w_n',
        'w_d',
      )
    : source(
        [
          given({ z: machine.shipsHigh, sk: assume.doorSkates, h_d: site.doorHeight }),
          lines(step('h_n', 'mm', 'height as shipped, on skates', 'z + sk')),
        ],
        'h_n',
        'h_d',
      );

const floorLoad: CheckFormula = ({ of }) =>
  source(
    [
      given({
        m_m: machine.mass,
        m_r: rotary.mass,
        m_f: called('mass of the fixture', part.fixtureMass),
        m: called('mass of the part', part.mass),
        x: machine.footprintX,
        y: machine.footprintY,
        q_f: site.floorRating,
      }),
      lines(
        step(
          'W',
          'kg',
          'all that stands on the floor',
          of.rotary.row === null ? 'm_m + m_f + m' : 'm_m + m_r + m_f + m',
        ),
        step('A', 'm²', 'footprint', 'x*y/1000000'),
        step('q', 'kPa', 'pressure on the floor, spread evenly', 'W*9.80665/(1000*A)'),
      ),
    ],
    'q',
    'q_f',
  );

const power: CheckFormula = ({ comparison }) => {
  if (comparison.what === 'phases')
    return source([given({ n_m: machine.phases, n_s: site.phases })], 'n_m', 'n_s');
  if (comparison.what === 'voltage')
    return source(
      [
        given({ U_m: machine.volts, U_s: site.volts, q: assume.voltageShare }),
        lines(
          step('dU', 'V', 'difference of the voltages', 'abs(U_m - U_s)'),
          step('dU_a', 'V', 'difference allowed', 'q*U_m'),
        ),
      ],
      'dU',
      'dU_a',
    );
  return source([given({ S_m: machine.kVA, S_s: site.kVA })], 'S_m', 'S_s');
};

const air: CheckFormula = ({ of, comparison }) => {
  if (comparison.what === 'air flow')
    return source([given({ V_m: machine.airFlow, V_s: site.airFlow })], 'V_m', 'V_s');
  const terms = [...(standsAlready(of) ? [] : ['p_m']), ...(of.rotary.row === null ? [] : ['p_r'])];
  return source(
    [
      given({ p_m: machine.airBar, p_r: rotary.airBar, p_s: site.airBar }),
      lines(step('p_n', 'bar', 'greatest pressure that is needed', overAll('max', terms))),
    ],
    'p_n',
    'p_s',
  );
};

const budget: CheckFormula = () => source([given({ K: setting.price, K_b: money.budget })], 'K', 'K_b');

export const SHOP_FORMULAS = { bay, ceiling, doorway, 'floor-load': floorLoad, power, air, budget } as const;
