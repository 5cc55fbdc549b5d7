import type { AssumptionName } from '../../questions/assumptions.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Block, type Cell, details, table } from '../blocks/block.ts';
import { type Inline, joined, keyName, number, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import type { ArrangementAt } from '../checks-at.ts';
import { partName } from '../names.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';

type Piece = readonly Inline[];

/** How the measures come about that no check stands behind: formula, what went in, source. */
export function measureSources(decision: Decision, at: ArrangementAt): Block {
  return details(say`How coverage, vise stations and floor area are worked out`, [
    table(
      [
        [say`Measure`, 'left'],
        [say`Formula`, 'left'],
        [say`What went in`, 'left'],
        [say`Source`, 'left'],
      ],
      [coverage(decision, at), viseStations(decision, at), floorArea(decision, at)],
    ),
  ]);
}

function coverage(decision: Decision, { arrangement }: ArrangementAt): readonly Cell[] {
  const families = Object.keys(decision.hours).filter((name) => !decision.threeAxis.includes(name));
  const pieces = families.map((name): Piece => {
    const verdict = Object.hasOwn(arrangement.parts, name) ? arrangement.parts[name] : undefined;
    const held =
      verdict === 'holds' || verdict === 'holds if' ? 'held' : verdict === 'open' ? 'open' : 'not held';
    const hours = number(['hours', name], 'h');
    return say`${partName(decision, name, ['hours', name])} ${hours}, ${words(held)}`;
  });
  return [
    [words(MEASURE_WORDS.coverage.title)],
    say`hours of the families that hold or hold if ÷ hours of all five-axis families; hours of a family = lots × setups ×
      setup time + quantity × (cycle + setups × handling)`,
    joined(pieces),
    say`the yearly answers; open families make it a range`,
  ];
}

function viseStations(decision: Decision, at: ArrangementAt): readonly Cell[] {
  const title: Cell = [words(MEASURE_WORDS.viseStations.title)];
  const width = viseSize(decision, 'width', 'viseWidth');
  const gap = assumed('viseGap');
  const machine = machinePath(decision, at);
  if (machine === null) return [title, [], [], []];
  const row = decision.inputs.catalog.machines.find(({ id }) => id === at.arrangement.machine);
  if (row?.spindle === 'horizontal')
    return [title, say`not counted: a vise on the table does not turn its work toward a level tool`, [], []];
  if (at.arrangement.mounting === 'built-in') {
    return [
      title,
      say`the most n with √((n × vise width + (n − one) × gap)² + bed length²) ≤ faceplate + overhang of the beds`,
      joined([
        say`faceplate ${stated(row?.builtIn?.faceplate ?? 'unknown', [...machine, 'builtIn', 'faceplate'], 'mm')}`,
        width,
        viseSize(decision, 'length', 'viseLength'),
        gap,
        assumed('bedOverhang'),
      ]),
      say`geometry; gap and overhang are assumptions`,
    ];
  }
  return [
    title,
    say`on each side ⌊(free + gap) ÷ (vise width + gap)⌋; free = end of the table to base, housing or swept work,
      whichever reaches further, less the gap beside the rotary and what lies beyond the X travel`,
    joined([
      say`table along X ${stated(row?.table?.size[0] ?? 'unknown', [...machine, 'table', 'size', 0], 'mm')}`,
      say`X travel ${stated(row?.travel[0] ?? 'unknown', [...machine, 'travel', 0], 'mm')}`,
      say`place along X ${number([...at.path, 'place', 'x'], 'mm')}`,
      ...baseSize(decision, at),
      width,
      gap,
      assumed('placeGap'),
    ]),
    say`geometry; gaps are assumptions`,
  ];
}

/** The base as the catalog has it; housing and swept work stand with the checks. */
function baseSize(decision: Decision, { arrangement }: ArrangementAt): readonly Piece[] {
  const index = decision.inputs.catalog.rotaries.findIndex(({ id }) => id === arrangement.rotary);
  const row = decision.inputs.catalog.rotaries[index];
  if (row === undefined) return [];
  const at = (key: string): Path => ['inputs', 'catalog', 'rotaries', index, 'base', key];
  const along = arrangement.mounting.endsWith('along-x');
  return [
    say`base along X ${stated(row.base[along ? 'along' : 'across'], at(along ? 'along' : 'across'), 'mm')}`,
  ];
}

function floorArea(decision: Decision, at: ArrangementAt): readonly Cell[] {
  const machine = machinePath(decision, at);
  const row = decision.inputs.catalog.machines.find(({ id }) => id === at.arrangement.machine);
  const [length = 'unknown', width = 'unknown'] = row?.footprint ?? [];
  return [
    [words(MEASURE_WORDS.floorArea.title)],
    say`length × width of the machine`,
    machine === null
      ? []
      : say`${stated(length, [...machine, 'footprint', 0], 'mm')} × ${stated(width, [...machine, 'footprint', 1], 'mm')}`,
    say`the catalog`,
  ];
}

const stated = (value: number | 'unknown', path: Path, unit: string): Piece =>
  value === 'unknown' ? say`not stated` : [number(path, unit)];

const assumed = (name: AssumptionName): Piece =>
  say`${keyName(['inputs', 'assume', name], true)} ${number(['inputs', 'assume', name], 'mm')}`;

/** The shop's own vise, or the ordinary one that is assumed. */
function viseSize(decision: Decision, key: 'width' | 'length', otherwise: AssumptionName): Piece {
  if (decision.inputs.answers.work.vise[key] === 'unknown') return assumed(otherwise);
  const path = ['inputs', 'answers', 'work', 'vise', key];
  return say`${words(key === 'width' ? 'width of a vise' : 'length of a vise bed')} ${number(path, 'mm')}`;
}

function machinePath(decision: Decision, { arrangement }: ArrangementAt): Path | null {
  const index = decision.inputs.catalog.machines.findIndex(({ id }) => id === arrangement.machine);
  return index < 0 ? null : ['inputs', 'catalog', 'machines', index];
}
