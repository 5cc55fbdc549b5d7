import { machine } from '../../rules/inputs/machine.ts';
import { rotary } from '../../rules/inputs/rotary.ts';
import { assume, setting, tools } from '../../rules/inputs/setting.ts';
import type { Case } from '../../rules/judging/case.ts';
import { isUpright, onHorizontal } from '../../rules/sides/base.ts';
import { step } from '../formula/formula-source.ts';
import { noseAt } from '../pieces/nose.ts';
import { called, given, lines, overAll, type Piece, source } from '../pieces/piece.ts';
import { TILT } from '../pieces/tilt-asked.ts';
import { opposite, tipEndsAlong } from '../pieces/tip-ends.ts';
import { tipsOf } from '../pieces/tips.ts';
import { turning, wholeOutline } from '../pieces/work.ts';
import { type CheckFormula, inputOf } from './check-formula.ts';

const TOOL_ABOVE = given({
  c: assume.approach,
  L: called('length of the longest tool, nose to tip', tools.longest),
});

const reachHigh: CheckFormula = ({ of }) => {
  const { pieces, boxes } = tipsOf(of);
  const tips = overAll(
    'max',
    boxes.flatMap(({ wHigh }) => wHigh),
  );
  return source(
    [
      ...pieces,
      TOOL_ABOVE,
      noseAt(of, 'noseTop'),
      lines(
        step('w_h', 'mm', 'highest place where the tip comes', tips),
        step('z_n', 'mm', 'nose needed, with clearance and the longest tool', 'w_h + c + L'),
      ),
    ],
    'z_n',
    'z',
  );
};

const reachLow: CheckFormula = ({ of }) => {
  const { pieces, boxes } = tipsOf(of);
  const tips = overAll(
    'min',
    boxes.flatMap(({ wLow }) => wLow),
  );
  return source(
    [
      ...pieces,
      given({ L_s: called('length of the shortest tool, nose to tip', tools.shortest) }),
      noseAt(of, 'noseBottom'),
      lines(
        step('w_l', 'mm', 'lowest place where the tip comes', tips),
        step('z_n', 'mm', 'as low as the nose has to come with the shortest tool', 'w_l + L_s'),
      ),
    ],
    'z_n',
    'z',
  );
};

const indexClear: CheckFormula = ({ of }) => {
  const level = of.rotary.axes === 1;
  const { pieces, corners } = wholeOutline(of);
  const round = turning(of);
  const highest = level
    ? overAll('max', round.radii)
    : overAll(
        'max',
        corners.map(({ v, w }) => `rise(${v}, ${w}, 0, tilt)`),
      );
  return source(
    [
      ...(level ? round.pieces : pieces),
      TILT,
      TOOL_ABOVE,
      noseAt(of, 'noseTop'),
      lines(
        step(
          'w_s',
          'mm',
          level ? 'greatest radius that turns' : 'highest that a corner of the work swings',
          highest,
        ),
        step('z_n', 'mm', 'nose needed, with clearance and the longest tool', 'w_s + c + L'),
      ),
    ],
    'z_n',
    'z',
  );
};

const tableClear: CheckFormula = ({ of }) => {
  const { pieces, corners } = wholeOutline(of);
  const lowest = overAll(
    'min',
    corners.map(({ v, w }) => `sink(-${v}, ${w}, 0, tilt)`),
  );
  return source(
    [
      ...pieces,
      TILT,
      given({ H: rotary.centerHeight, pl: setting.plateThickness, gap: assume.clearGap }),
      lines(
        step('w_s', 'mm', 'lowest that a corner of the work swings, from the tilt axis', lowest),
        step('z_t', 'mm', 'table and gap, from the tilt axis', 'gap - H - pl'),
      ),
    ],
    'w_s',
    'z_t',
  );
};

const housingClear: CheckFormula = ({ of, comparison }) => {
  const { pieces, boxes } = tipsOf(of);
  const angle = comparison.have.terms(of)[0]?.uses.tilt?.input.read(of);
  const box = boxes.find(
    (each) =>
      comparison.what.startsWith(`${each.name} over `) && (each.angle === undefined || each.angle === angle),
  );
  return source(
    [
      ...pieces,
      given({
        g: inputOf(comparison.need, of, 'top of the housing'),
        H: rotary.centerHeight,
        gap: assume.clearGap,
        L: called('length of the longest tool, nose to tip', tools.longest),
      }),
      lines(
        step(
          'w_g',
          'mm',
          'housing and gap, above the tilt axis (the rotary axis where nothing tilts)',
          'g - H + gap',
        ),
        step('w_n', 'mm', 'nose over the lowest tip there', `${overAll('min', box?.wLow ?? [])} + L`),
      ),
    ],
    'w_g',
    'w_n',
  );
};

const WAYS = {
  x: { travel: machine.travelX, place: setting.placeX, low: machine.reachLeft, high: machine.reachRight },
  y: { travel: machine.travelY, place: setting.placeY, low: machine.reachFront, high: machine.reachRear },
} as const;

/** The whole travel, and what there is of it to each side: gives X, X_l and X_h. */
function travelAlong(of: Case, axis: 'x' | 'y'): readonly Piece[] {
  const { travel, place, low, high } = WAYS[axis];
  if (of.machine.builtIn)
    return [given({ X_l: low, X_h: high }), lines(step('X', 'mm', 'travel about the table', 'X_l + X_h'))];
  if (axis === 'y' && isUpright(of))
    return [
      given({
        y_l: machine.spindleBottom,
        y_h: machine.spindleTop,
        p: rotary.faceOffset,
        pl: setting.plateThickness,
      }),
      lines(
        step('X', 'mm', 'heights of the spindle', 'y_h - y_l'),
        step('X_l', 'mm', 'travel below the faceplate', 'p + pl - y_l'),
        step('X_h', 'mm', 'travel above the faceplate', 'y_h - p - pl'),
      ),
    ];
  const level = axis === 'y' && onHorizontal(of);
  return [
    given({ X_t: travel, x_r: place, y_l: machine.spindleBottom, y_h: machine.spindleTop }),
    lines(
      step('X', 'mm', 'travel', level ? 'y_h - y_l' : 'X_t'),
      step('X_l', 'mm', 'travel to the left or front of the rotary', 'X_t/2 + x_r'),
      step('X_h', 'mm', 'travel to the right or rear of the rotary', 'X_t/2 - x_r'),
    ),
  ];
}

const travelOf =
  (axis: 'x' | 'y'): CheckFormula =>
  ({ of, comparison }) => {
    const { low, high } = tipEndsAlong(of, axis);
    const pieces = [
      ...tipsOf(of).pieces,
      ...travelAlong(of, axis),
      lines(
        step(
          'x_h',
          'mm',
          'how far the tips go to the right or rear of the rotary center',
          overAll('max', high),
        ),
        step('x_l', 'mm', 'how far they go to the left or front of it', overAll('max', low.map(opposite))),
        step('x_w', 'mm', 'all the tips together', 'x_h + x_l'),
      ),
    ];
    if (comparison.what.includes('far side')) return source(pieces, 'x_h', 'X_h');
    if (comparison.what.includes('near side')) return source(pieces, 'x_l', 'X_l');
    return source(pieces, 'x_w', 'X');
  };

export const REACH_FORMULAS = {
  'travel-x': travelOf('x'),
  'travel-y': travelOf('y'),
  'reach-high': reachHigh,
  'reach-low': reachLow,
  'index-clear': indexClear,
  'table-clear': tableClear,
  'housing-clear': housingClear,
} as const;
