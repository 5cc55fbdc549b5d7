import { part } from '../../rules/inputs/part.ts';
import { rotary } from '../../rules/inputs/rotary.ts';
import { assume, setting } from '../../rules/inputs/setting.ts';
import { isUpright } from '../../rules/sides/base.ts';
import { step } from '../formula/formula-source.ts';
import { called, given, lines, source } from '../pieces/piece.ts';
import { TILT } from '../pieces/tilt-asked.ts';
import { planRadius, sweptRadius } from '../pieces/work.ts';
import type { CheckFormula } from './check-formula.ts';

const swing: CheckFormula = ({ of }) => {
  const level = of.rotary.axes === 1 && !isUpright(of);
  return source(
    [
      sweptRadius(of),
      given({ F: called('diameter of the fixture', part.fixtureDiameter), S: rotary.swing }),
      given({ H: rotary.centerHeight, pl: setting.plateThickness, gap: assume.swingGap }),
      lines(
        step('D_w', 'mm', 'circle that the work describes', '2*max(R, F/2)'),
        step('S_f', 'mm', 'circle that turns freely', level ? 'min(S, 2*(H + pl - gap))' : 'S'),
      ),
    ],
    'D_w',
    'S_f',
  );
};

const around = step('D_w', 'mm', 'circle around the part', '2*r');

const faceplate: CheckFormula = ({ of }) =>
  of.rotary.hasFaceplate
    ? source([planRadius(of), given({ P: rotary.faceplate }), lines(around)], 'D_w', 'P')
    : source([planRadius(of), lines(around, step('P', 'mm', 'there is no faceplate', '0'))], 'D_w', 'P');

const collet: CheckFormula = ({ of }) =>
  of.rotary.hasCollet
    ? source([planRadius(of), given({ C: rotary.collet }), lines(around)], 'D_w', 'C')
    : source([planRadius(of), lines(around, step('C', 'mm', 'it takes no collet', '0'))], 'D_w', 'C');

const payload: CheckFormula = ({ of }) => {
  const onEdge = of.rotary.axes === 1 || of.rotary.gravity !== 'tool';
  const carries = isUpright(of) ? 'Q_l' : onEdge ? 'Q_t' : 'if(tilt <= 30, Q_l, Q_t)';
  return source(
    [
      given({
        m: called('mass of the part', part.mass),
        m_f: called('mass of the fixture', part.fixtureMass),
        Q_l: rotary.payloadLevel,
        Q_t: rotary.payloadTilted,
      }),
      TILT,
      lines(step('W', 'kg', 'part and fixture', 'm + m_f'), step('Q', 'kg', 'payload at this tilt', carries)),
    ],
    'W',
    'Q',
  );
};

const inertia: CheckFormula = ({ of }) =>
  source(
    [
      sweptRadius(of),
      given({
        m: called('mass of the part', part.mass),
        m_f: called('mass of the fixture', part.fixtureMass),
        F: called('diameter of the fixture', part.fixtureDiameter),
        J_r: rotary.inertia,
      }),
      lines(
        step(
          'J_p',
          'kg·mm²',
          'part about its own axis',
          of.part?.shape === 'round' ? 'm*a^2/8' : 'm*(a^2 + b^2)/12',
        ),
        step('J_o', 'kg·mm²', 'more for standing off the axis', 'm*e^2'),
        step('J_f', 'kg·mm²', 'fixture, as a disc', 'm_f*F^2/8'),
        step('J', 'kg·m²', 'inertia about the rotary axis', '(J_p + J_o + J_f)/1000000'),
      ),
    ],
    'J',
    'J_r',
  );

export const ENVELOPE_FORMULAS = { swing, faceplate, collet, payload, inertia } as const;
