import { caseInput, partInput } from '../../rules/inputs/input.ts';
import { machine } from '../../rules/inputs/machine.ts';
import { part } from '../../rules/inputs/part.ts';
import { rotary } from '../../rules/inputs/rotary.ts';
import { assume, setting, tools } from '../../rules/inputs/setting.ts';
import type { Case } from '../../rules/judging/case.ts';
import { known } from '../../rules/judging/value.ts';
import { alongX, standsAlong } from '../../rules/sides/base.ts';
import { turnedRound } from '../../rules/sides/extent.ts';
import { housingEnds } from '../../rules/sides/housing.ts';
import { pointsBack } from '../../rules/sides/points-back.ts';
import { step } from '../formula/formula-source.ts';
import { cuttingPower, cuttingSpeed } from '../pieces/cut.ts';
import { called, given, lines, overAll, type Piece, source } from '../pieces/piece.ts';
import { TILT } from '../pieces/tilt-asked.ts';
import { tipEndsAlong } from '../pieces/tip-ends.ts';
import { faceWordsOf, tipsOf } from '../pieces/tips.ts';
import { planRadius, sweptRadius, turning, wholeOutline } from '../pieces/work.ts';
import { type CheckFormula, inputOf } from './check-formula.ts';

const tableFootprint: CheckFormula = ({ of, comparison }) => {
  const axis = comparison.what.endsWith('X') ? 'x' : 'y';
  return source(
    [
      given({
        l_b: standsAlong(of, axis),
        l_t: axis === 'x' ? machine.tableX : machine.tableY,
        o: assume.tableOverhang,
      }),
      lines(step('l_a', 'mm', 'table with the overhang that is allowed', 'l_t + o')),
    ],
    'l_b',
    'l_a',
  );
};

const slotMatch: CheckFormula = ({ of, comparison }) => {
  const allowed = given({ q: assume.slotMisfit });
  if (comparison.what === 'keys in the slots')
    return source(
      [
        allowed,
        given({ k: inputOf(comparison.need, of, 'width of the keys'), s: machine.slotWidth }),
        lines(step('d', 'mm', 'misfit of keys and slots', 'abs(k - s)')),
      ],
      'd',
      'q',
    );
  const bolts = comparison.need
    .terms(of)
    .flatMap(({ uses }) => (uses.bolts === undefined ? [] : [uses.bolts.input]))
    .map((input, index) => [`p${index + 1}`, input] as const);
  const misfits = bolts.map(([p]) => `abs(${p} - s*min(max(round(${p}/s), 1), n_s - 1))`);
  return source(
    [
      allowed,
      given({ ...Object.fromEntries(bolts), s: machine.slotPitch, n_s: machine.slotCount }),
      lines(step('d', 'mm', 'how far the bolts miss the nearest pair of slots', overAll('min', misfits))),
    ],
    'd',
    'q',
  );
};

const tableLoad: CheckFormula = () =>
  source(
    [
      given({
        m_r: rotary.mass,
        m_p: setting.plateMass,
        m_f: called('mass of the fixture', part.fixtureMass),
        m: called('mass of the part', part.mass),
        Q: machine.tableLoad,
      }),
      lines(step('W', 'kg', 'all that stands on the table', 'm_r + m_p + m_f + m')),
    ],
    'W',
    'Q',
  );

/** How far the swept work comes to the rear. */
function workBehind(of: Case): { readonly pieces: readonly Piece[]; readonly ends: readonly string[] } {
  const { pieces, corners } = wholeOutline(of);
  if (of.rotary.axes === 2 && alongX(of)) {
    const beyond = (of.part?.tilt.high ?? 0) > 90;
    const upTo = beyond ? '90' : 'tilt';
    const ends = corners.flatMap(({ v, w }) =>
      turnedRound(of)
        ? [`-back(-${v}, ${w}, 0, ${upTo})`, ...(beyond ? [`-back(${v}, ${w}, 90, tilt)`] : [])]
        : [`out(${v}, ${w}, 0, ${upTo})`, ...(beyond ? [`out(-${v}, ${w}, 90, tilt)`] : [])],
    );
    return { pieces, ends };
  }
  const round = turning(of);
  if (of.rotary.axes === 2 || alongX(of)) return { pieces: round.pieces, ends: round.radii };
  return { pieces: tipsOf(of).pieces, ends: of.place.turned ? [] : ['f + h'] };
}

/** The rear end of base and housing, with connectors: gives them as formulas. */
function rotaryBehind(of: Case): { readonly pieces: readonly Piece[]; readonly ends: readonly string[] } {
  const { mounting, place, rotary: table } = of;
  if (of.machine.builtIn || mounting === 'built-in') return { pieces: [], ends: [] };
  const boxes = (table.row?.housing ?? []).map((box, at) => {
    const [, rear] = housingEnds(box, { mounting, turned: place.turned }, 'y');
    const path = `rotaries[${table.key}].housing[${at}]`;
    return [
      `g${at + 1}`,
      caseInput('rear end of the housing', 'mm', [-900, 900], () => known(rear, path)),
    ] as const;
  });
  const back = pointsBack(mounting, place.turned, 'y');
  const across = alongX(of);
  const base = across
    ? given({ l_b: rotary.baseAcross, o_b: rotary.baseCenterAcross })
    : given({ l_b: rotary.baseAlong, o_b: table.axes === 1 ? rotary.faceOffset : rotary.baseCenterAlong });
  const end = back ? 'o_b' : 'l_b - o_b';
  const room = given({ room: assume.connectorRoom });
  const ends = boxes.length === 0 ? [`${end} + room`] : [end, ...boxes.map(([name]) => `${name} + room`)];
  return { pieces: [base, room, given(Object.fromEntries(boxes))], ends };
}

const column: CheckFormula = ({ of }) => {
  const work = workBehind(of);
  const table = rotaryBehind(of);
  return source(
    [
      ...tipsOf(of).pieces,
      ...work.pieces,
      ...table.pieces,
      TILT,
      given({ C: machine.throat }),
      lines(
        step(
          'y_r',
          'mm',
          'rearmost of work, base, housing and connectors',
          overAll('max', [...work.ends, ...table.ends]),
        ),
        step('y_f', 'mm', 'foremost place where the tip comes', overAll('min', tipEndsAlong(of, 'y').low)),
        step('d', 'mm', 'what stands behind the spindle over that place', 'y_r - y_f'),
      ),
    ],
    'd',
    'C',
  );
};

const toolLength: CheckFormula = ({ of, comparison }) => {
  const low = given({
    f: called('height of the fixture', part.fixtureHeight),
    low: called('lowest side feature above the fixture', part.lowestSideFeature),
    P: rotary.faceplate,
    gap: assume.clearGap,
  });
  if (comparison.what === 'height of the fixture for an undercut') return undercut(of, low);
  const faces = faceWordsOf(of).map(({ apart }) => apart);
  const passes = (edge: string, near: string): readonly string[] =>
    faces.map((a) => `if(${near} < nose/2 + gap, max(0, ${edge}/2 + gap - (${a}/2 - e - ds)), 0)`);
  return source(
    [
      sweptRadius(of),
      low,
      given({
        F: called('diameter of the fixture', part.fixtureDiameter),
        ds: called('depth from the sides', part.depthSide),
        nose: machine.noseDiameter,
        L: called('length of the longest tool, nose to tip', tools.longest),
      }),
      lines(
        step(
          'L_p',
          'mm',
          'to pass the faceplate',
          of.rotary.hasFaceplate ? overAll('max', passes('P', 'f + low')) : '0',
        ),
        step('L_x', 'mm', 'to pass the fixture', overAll('max', passes('F', 'low'))),
        step('L_n', 'mm', 'gauge length needed', 'max(L_p, L_x)'),
      ),
    ],
    'L_n',
    'L',
  );
};

function undercut(of: Case, low: Piece) {
  const angles = (of.part?.approaches ?? []).flatMap((each) =>
    each.kind === 'undercut' ? [partInput('angle of the undercut', '°', [91, 150], () => each.angle)] : [],
  );
  const named = angles.map((input, index) => [`s${index + 1}`, input] as const);
  const heights = named.flatMap(([s]) =>
    faceWordsOf(of).map(
      ({ apart }) =>
        `if(P/2 + gap - ${apart}/2 <= 0, 0, max(0, (P/2 + gap - ${apart}/2)*tan(${s} - 90) + D/(2*cos(${s} - 90)) - low))`,
    ),
  );
  return source(
    [
      planRadius(of),
      low,
      given({
        ...Object.fromEntries(named),
        D: called('diameter of the largest cutter', tools.largestCutter),
      }),
      lines(step('f_n', 'mm', 'height of the fixture that the undercut asks for', overAll('max', heights))),
    ],
    'f_n',
    'f',
  );
}

const spindlePower: CheckFormula = ({ family }) =>
  source(
    [
      ...cuttingPower(family),
      given({ q: assume.spindleEfficiency, P_s: machine.power }),
      lines(step('P_m', 'kW', 'power at the motor', 'Pc/q')),
    ],
    'P_m',
    'P_s',
  );

const spindleTorque: CheckFormula = ({ family }) =>
  source(
    [
      ...cuttingPower(family),
      given({ P_s: machine.power, M_s: machine.torque }),
      lines(step('M_n', 'N·m', 'torque that there is at this speed', 'min(M_s, 9549*P_s/n)')),
    ],
    'Mc',
    'M_n',
  );

const spindleSpeed: CheckFormula = ({ family }) =>
  source([...cuttingSpeed(family), given({ n_s: machine.speed })], 'n', 'n_s');

export const MACHINE_FIT_FORMULAS = {
  'table-footprint': tableFootprint,
  'slot-match': slotMatch,
  'table-load': tableLoad,
  column,
  'tool-length': toolLength,
  'spindle-power': spindlePower,
  'spindle-torque': spindleTorque,
  'spindle-speed': spindleSpeed,
} as const;
