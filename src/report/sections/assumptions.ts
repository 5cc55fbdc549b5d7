import { MATERIAL_IDS } from '../../mechanics/forces/materials.ts';
import {
  ASSUMED_COUPLING,
  ASSUMPTION_GROUPS,
  ASSUMPTIONS,
  type Assumption,
  type AssumptionGroup,
  type AssumptionName,
} from '../../questions/assumptions.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Block, type Cell, details, heading, paragraph, table } from '../blocks/block.ts';
import { data, keyName, number, say, standard, words } from '../blocks/inline.ts';
import { MATERIAL_WORDS } from '../wording/materials.ts';

/** The numbers that have no source, and those of the materials that were cut. */
export function assumptions(decision: Decision): readonly Block[] {
  return [heading(2, say`Assumptions and materials`), ...assumed(decision), ...materials(decision)];
}

function assumed(decision: Decision): readonly Block[] {
  const { assume } = decision.inputs.answers;
  const names = Object.keys(ASSUMPTIONS) as AssumptionName[];
  const groups = Object.keys(ASSUMPTION_GROUPS) as AssumptionGroup[];
  return [
    paragraph(
      say`These numbers have no source. Each can be changed in the answers file, under its name in the block
        “assume”.`,
    ),
    details(say`Assumptions with their values`, [
      table(
        [
          [say`Name`, 'left'],
          [say`Value`, 'right'],
          [say`What it is`, 'left'],
          [say`Changed by you`, 'left'],
        ],
        [
          ...names.map((name) => row([name], ASSUMPTIONS[name], Object.hasOwn(assume, name))),
          ...groups.flatMap((group) =>
            Object.entries<Assumption>(ASSUMPTION_GROUPS[group]).map(([name, each]) =>
              row([group, name], each, Object.hasOwn(assume[group] ?? {}, name)),
            ),
          ),
          coupling(assume.handLift?.coupling !== undefined),
        ],
      ),
    ]),
  ];
}

const ROOT = ['inputs', 'assume'];

const row = (name: readonly string[], { unit, means }: Assumption, changed: boolean): readonly Cell[] => [
  nameOf(name),
  [number([...ROOT, ...name], unit)],
  [words(means)],
  changed ? say`yes` : [],
];

const coupling = (changed: boolean): readonly Cell[] => [
  nameOf(['handLift', 'coupling']),
  [data([...ROOT, 'handLift', 'coupling'])],
  [words(ASSUMED_COUPLING.means)],
  changed ? say`yes` : [],
];

/** A name as it stands in the file; one inside a group behind the name of its group. */
const nameOf = (name: readonly string[]): Cell =>
  name.flatMap((_, index) => [
    ...(index === 0 ? [] : [words(': ')]),
    keyName([...ROOT, ...name.slice(0, index + 1)], true),
  ]);

function materials(decision: Decision): readonly Block[] {
  const { parts } = decision.inputs.answers;
  // a material that is not known is judged as each of them
  const used = MATERIAL_IDS.filter((id) =>
    parts.some(({ material }) => material === id || material === 'unknown'),
  );
  if (used.length === 0) return [];
  return [
    paragraph(
      say`Cutting forces are worked out from the specific cutting force ${standard('kc1.1')} and its exponent mc. Tables
        differ much from each other, so take them as rough.`,
    ),
    table(
      [
        [say`Material`, 'left'],
        [[standard('kc1.1')], 'right'],
        [say`mc`, 'right'],
        [say`Density`, 'right'],
        [say`Source of the force`, 'left'],
        [say`Source of the density`, 'left'],
      ],
      used.map((id) => {
        const at = (key: string) => ['inputs', 'materials', id, key];
        return [
          [words(MATERIAL_WORDS[id])],
          [number(at('kc11'), 'N/mm²')],
          [number(at('mc'), '')],
          [number(at('density'), 'kg/m³')],
          [data(at('source'))],
          [data(at('densitySource'))],
        ];
      }),
    ),
  ];
}
