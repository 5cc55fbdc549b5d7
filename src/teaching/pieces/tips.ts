import { partInput } from '../../rules/inputs/input.ts';
import { part } from '../../rules/inputs/part.ts';
import { tools } from '../../rules/inputs/setting.ts';
import type { ApproachCase, Case } from '../../rules/judging/case.ts';
import type { Value } from '../../rules/judging/value.ts';
import { step } from '../formula/formula-source.ts';
import { called, type Piece } from './piece.ts';
import { TILT } from './tilt-asked.ts';
import { planRadius, STACK, sweptRadius } from './work.ts';

/**
 * Where the tip of the tool comes for one approach, as formulas: along the tilt (or rotary) axis, level and across it, and
 * up. Several terms: the least or greatest of them.
 */
interface TipWords {
  readonly name: string;
  /** of a slant or an undercut: which of several it is */
  readonly angle?: Value;
  readonly uLow: readonly string[];
  readonly uHigh: readonly string[];
  readonly vLow: readonly string[];
  readonly vHigh: readonly string[];
  readonly wLow: readonly string[];
  readonly wHigh: readonly string[];
}

export interface Tips {
  readonly pieces: readonly Piece[];
  readonly boxes: readonly TipWords[];
}

const CUTTER: Piece = {
  given: { D: called('diameter of the largest cutter', tools.largestCutter) },
  steps: [step('t', 'mm', 'half of the cutter', 'D/2')],
};
const DEPTH_TOP: Piece = { given: { dt: called('depth from the top', part.depthTop) }, steps: [] };
const DEPTH_SIDE: Piece = {
  given: { ds: called('depth from the sides', part.depthSide) },
  steps: [],
};

const AROUND_AXIS = { uLow: ['-(R + t)'], uHigh: ['R + t'] } as const;

interface FaceWords {
  readonly name: string;
  readonly apart: string;
  readonly wide: string;
}

/** Pairs of side faces: how far apart they are, and how wide each is. */
export const faceWordsOf = (of: Case): readonly FaceWords[] =>
  of.part?.shape === 'round'
    ? [{ name: 'side', apart: 'a', wide: 'a' }]
    : [
        { name: 'side faces along the length', apart: 'a', wide: 'b' },
        { name: 'side faces along the width', apart: 'b', wide: 'a' },
      ];

const wallLow = (of: Case): readonly string[] => faceWordsOf(of).map(({ apart }) => `${apart}/2 - e - ds`);

/** Every box of the part on this class of rotary; none where it reaches none of its sides. */
export function tipsOf(of: Case): Tips {
  const { part: family } = of;
  if (family === null) return { pieces: [], boxes: [] };
  const shared = [planRadius(of), sweptRadius(of), CUTTER];
  if (of.rotary.axes === 1) {
    const reached = family.approaches.some(({ kind }) => kind === 'around' || kind === 'sides');
    return { pieces: [...shared, FIXTURE_AND_PART, DEPTH_SIDE], boxes: reached ? [levelAxis(of)] : [] };
  }
  const all = family.approaches.map((approach, index) => tiltedTips(of, approach, index));
  const moving = family.motion === 'simultaneous' ? [simultaneous(of)] : [];
  return {
    pieces: [...shared, STACK, ...[...all, ...moving].flatMap(({ pieces }) => pieces)],
    boxes: [...all, ...moving].flatMap(({ boxes }) => boxes),
  };
}

const FIXTURE_AND_PART: Piece = {
  given: {
    f: called('height of the fixture', part.fixtureHeight),
    h: called('height of the part', part.height),
  },
  steps: [],
};

const levelAxis = (of: Case): TipWords => ({
  name: 'around',
  uLow: ['f'],
  uHigh: ['f + h + t'],
  vLow: ['-(R + t)'],
  vHigh: ['R + t'],
  wLow: wallLow(of),
  wHigh: ['R'],
});

function tiltedTips(of: Case, approach: ApproachCase, index: number): Tips {
  switch (approach.kind) {
    case 'top':
      return {
        pieces: [DEPTH_TOP],
        boxes: [
          {
            name: 'top',
            ...AROUND_AXIS,
            vLow: ['-(R + t)'],
            vHigh: ['R + t'],
            wLow: ['T - dt'],
            wHigh: ['T'],
          },
        ],
      };
    case 'sides':
      return {
        pieces: [DEPTH_SIDE],
        boxes: faceWordsOf(of).map(({ name, apart, wide }) => ({
          name,
          uLow: [`-(${wide}/2 + e + t)`],
          uHigh: [`${wide}/2 + e + t`],
          vLow: ['-(T + t)'],
          vHigh: ['-B'],
          wLow: [`${apart}/2 - e - ds`],
          wHigh: [`${apart}/2 + e`],
        })),
      };
    case 'around':
      return {
        pieces: [DEPTH_SIDE],
        boxes: [
          {
            name: 'around',
            ...AROUND_AXIS,
            vLow: ['-(T + t)'],
            vHigh: ['-B'],
            wLow: wallLow(of),
            wHigh: ['R'],
          },
        ],
      };
    case 'slant':
    case 'undercut':
      return angled(approach.kind, approach.angle, `s${index + 1}`);
  }
}

function angled(
  kind: 'slant' | 'undercut',
  angle: Extract<ApproachCase, { angle: unknown }>['angle'],
  s: string,
): Tips {
  const input = partInput(`angle of the ${kind}`, '°', [1, 150], () => angle);
  const at = (v: string, w: string): string => `${v}*cos(${s}) - ${w}*sin(${s})`;
  const box: TipWords =
    kind === 'slant'
      ? {
          name: kind,
          angle,
          ...AROUND_AXIS,
          vLow: [`${at('-R', 'T')} - t`],
          vHigh: [`${at('R', 'B')} + t`],
          wLow: [`-R*sin(${s}) + T*cos(${s})`, `-e*sin(${s}) + B*cos(${s})`],
          wHigh: [`R*sin(${s}) + T*cos(${s})`],
        }
      : {
          name: kind,
          angle,
          ...AROUND_AXIS,
          vLow: [`${at('R', 'T')} - t`],
          vHigh: [`${at('-e', 'B')} + t`],
          wLow: [`-e*sin(${s}) + T*cos(${s})`],
          wHigh: [`R*sin(${s}) + B*cos(${s})`],
        };
  return { pieces: [{ given: { [s]: input }, steps: [] }], boxes: [box] };
}

/** Every tilt from level to the greatest: the top is seen up to 90°, the near wall throughout. */
function simultaneous(of: Case): Tips {
  const beyond = (of.part?.tilt.high ?? 0) > 90;
  const upTo = beyond ? '90' : 'tilt';
  return {
    pieces: [TILT],
    boxes: [
      {
        name: 'simultaneous',
        ...AROUND_AXIS,
        vLow: [`back(-R, T, 0, ${upTo}) - t`, ...(beyond ? ['back(R, T, 90, tilt) - t'] : [])],
        vHigh: [`out(R, B, 0, ${upTo}) + t`, ...(beyond ? ['out(-e, B, 90, tilt) + t'] : [])],
        wLow: [
          `sink(-R, T, 0, ${upTo})`,
          `sink(-e, B, 0, ${upTo})`,
          ...(beyond ? ['sink(-e, T, 90, tilt)'] : []),
        ],
        wHigh: [`rise(R, T, 0, ${upTo})`, ...(beyond ? ['rise(R, B, 90, tilt)'] : [])],
      },
    ],
  };
}
