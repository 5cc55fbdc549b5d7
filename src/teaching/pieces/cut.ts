import { MATERIALS, type MaterialRow } from '../../mechanics/forces/materials.ts';
import type { CutDetail, Part } from '../../questions/answers.ts';
import { ASSUMED_CUTS, ASSUMED_DIAMETER, ASSUMED_TEETH } from '../../rules/facts/cut-facts.ts';
import { partInput } from '../../rules/inputs/input.ts';
import { part } from '../../rules/inputs/part.ts';
import { tools } from '../../rules/inputs/setting.ts';
import type { Input } from '../../rules/judging/term.ts';
import { known } from '../../rules/judging/value.ts';
import { step } from '../formula/formula-source.ts';
import { called, type Piece } from './piece.ts';

/** The cut whose force or power is meant. */
export type WhichCut = 'cut' | 'contourCut';

type Sizes = Exclude<keyof CutDetail, 'interrupted'>;

const WORDS: Readonly<Record<Sizes, readonly [symbol: string, words: string, unit: string]>> = {
  diameter: ['Dc', 'diameter of the tool', 'mm'],
  teeth: ['n_t', 'teeth of the tool', ''],
  ap: ['ap', 'depth of cut along the tool', 'mm'],
  ae: ['ae', 'width of cut across the tool', 'mm'],
  fz: ['fz', 'feed per tooth', 'mm/tooth'],
  vc: ['vc', 'cutting speed', 'm/min'],
};

const fixedInput = (words: string, unit: string, value: number, path: string): Input =>
  partInput(words, unit, [0, 1e6], () => known(value, path));

/** What a material asks for. */
const ofMaterial = (name: string, { kc11, mc }: MaterialRow): Piece['given'] => ({
  kc1: fixedInput(
    'specific cutting force of the material at a chip of 1 mm',
    'N/mm²',
    kc11,
    `materials.${name}.kc11`,
  ),
  mc: fixedInput('how fast it falls with the chip', '', mc, `materials.${name}.mc`),
});

/**
 * Tool and cut, as far as they are known: a cut that is described, or one that is assumed by its size. Null where the cut or
 * the material is not known.
 */
function toolAndCut(family: Part | null, which: WhichCut): Piece | null {
  const cut = family?.[which];
  if (family === null || cut === undefined || cut === 'unknown' || family.material === 'unknown') return null;
  const row = MATERIALS[family.material];
  const material = ofMaterial(family.material, row);
  const at = `parts[${family.name}].${which}`;
  const read = (key: Sizes, value: number, path: string): Piece['given'] => {
    const [symbol, words, unit] = WORDS[key];
    return { [symbol]: fixedInput(words, unit, value, path) };
  };
  if (typeof cut === 'object') {
    const sizes = (Object.keys(WORDS) as Sizes[]).map((key) => [key, cut[key]] as const);
    if (sizes.some(([, value]) => typeof value !== 'number')) return null;
    const described = sizes.map(([key, value]) => read(key, Number(value), `${at}.${key}`));
    return { given: Object.assign({ ...material }, ...described) as Piece['given'], steps: [] };
  }
  return {
    given: {
      ...material,
      D: called('diameter of the largest cutter', tools.largestCutter),
      ...read('teeth', ASSUMED_TEETH, `${at}.teeth`),
      ...read('fz', row.fz, `materials.${family.material}.fz`),
      ...read('vc', row.vc, `materials.${family.material}.vc`),
    },
    steps: [
      step('Dc', 'mm', 'diameter of the tool that is taken', `min(${ASSUMED_DIAMETER}, D)`),
      step('ap', 'mm', `depth of a ${cut} cut`, `Dc*${ASSUMED_CUTS[cut].ap}`),
      step('ae', 'mm', `width of a ${cut} cut`, `Dc*${ASSUMED_CUTS[cut].ae}`),
    ],
  };
}

const ENGAGED = step('w_c', '°', 'angle over which a tooth is in the cut', 'acos(1 - 2*min(ae, Dc)/Dc)');

/** The greatest force along the cutting direction: gives Ft. Where the cut is not told, the force itself is given. */
export function cuttingForce(family: Part | null, which: WhichCut): readonly Piece[] {
  const cut = toolAndCut(family, which);
  if (cut === null)
    return [{ given: { Ft: which === 'cut' ? part.cutForce : part.contourForce }, steps: [] }];
  return [
    cut,
    {
      given: {},
      steps: [
        ENGAGED,
        step('h_c', 'mm', 'thickest chip', 'if(w_c < 90, fz*sin(w_c), fz)'),
        step('n_c', '', 'teeth in the cut at once', 'max(1, ceil(n_t*w_c/360 - 0.000000001))'),
        step('Ft', 'N', 'greatest force along the cut', 'kc1*h_c^(1 - mc)*ap*n_c'),
      ],
    },
  ];
}

/** Speed, power and torque of the heaviest cut: gives n, Pc and Mc. */
export function cuttingPower(family: Part | null): readonly Piece[] {
  const cut = toolAndCut(family, 'cut');
  if (cut === null)
    return [{ given: { n: part.cutSpeed, Pc: part.cutPower, Mc: part.cutTorque }, steps: [] }];
  return [
    cut,
    {
      given: {},
      steps: [
        step('n', 'rev/min', 'spindle speed', '1000*vc/(pi*Dc)'),
        step('vf', 'mm/min', 'feed of the table', 'fz*n_t*n'),
        ENGAGED,
        step('h_m', 'mm', 'mean chip', 'fz*min(ae, Dc)/Dc*360/(pi*w_c)'),
        step('kc', 'N/mm²', 'specific cutting force at that chip', 'kc1*h_m^(-mc)'),
        step('Pc', 'kW', 'power at the tool', 'ap*min(ae, Dc)*vf*kc/60000000'),
        step('Mc', 'N·m', 'torque of the cut', 'Pc*30000/(pi*n)'),
      ],
    },
  ];
}

/** The spindle speed alone: gives n. */
export function cuttingSpeed(family: Part | null): readonly Piece[] {
  const cut = toolAndCut(family, 'cut');
  if (cut === null) return [{ given: { n: part.cutSpeed }, steps: [] }];
  const { vc, Dc, D } = cut.given;
  return [
    {
      given: Object.fromEntries(
        Object.entries({ vc, Dc, D }).filter(([, input]) => input !== undefined),
      ) as Piece['given'],
      steps: [
        ...cut.steps.filter(({ gives }) => gives === 'Dc'),
        step('n', 'rev/min', 'spindle speed', '1000*vc/(pi*Dc)'),
      ],
    },
  ];
}
