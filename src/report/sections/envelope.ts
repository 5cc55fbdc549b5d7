import type { Decision, SizeCost } from '../../rules/decision.ts';
import { type Block, type Cell, figureBlock, heading, paragraph, table } from '../blocks/block.ts';
import { codeData, type Inline, number, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { coverageChart } from '../figures/coverage-chart.ts';
import { machineName, partName, rotaryName } from '../names.ts';

/** How large the rotary has to be: the share of the hours that a swing holds, and where it stops to pay. */
export function envelope(decision: Decision): readonly Block[] {
  const { curve, knee, atKnee, forAll } = decision.envelope;
  if (curve.length === 0) return [];
  const rows = curve.map((point, index): readonly Cell[] => {
    const at = (key: string): Path => ['envelope', 'curve', index, key];
    return [
      [partName(decision, point.part, at('part'))],
      [number(at('swing'), 'mm')],
      [number(at('hours'), 'h')],
      [number(at('share'), 'share')],
      point.beyondKnee ? say`beyond the knee` : [],
    ];
  });
  return [
    heading(2, say`Size: what a larger swing would still hold`),
    paragraph(
      say`Families in the order of the circle that they describe as they turn. The size is chosen at the knee: where
        every further family adds less than ${number(['inputs', 'assume', 'kneeShare'], 'share')} of the hours, with
        must-have parts always inside. Bigger is not better by itself.`,
    ),
    table(
      [
        [say`Family`, 'left'],
        [say`Swing needed`, 'right'],
        [say`Hours a year`, 'right'],
        [say`Share of the five-axis hours up to here`, 'right'],
        [say`Knee`, 'left'],
      ],
      rows,
    ),
    paragraph(kneeSentence(decision, knee, atKnee, forAll)),
    ...figureBlock(coverageChart(decision)),
  ];
}

function kneeSentence(
  decision: Decision,
  knee: number | null,
  atKnee: SizeCost | null,
  forAll: SizeCost | null,
): readonly Inline[] {
  if (knee === null) return say`Where the knee lies is open: something that is not known decides.`;
  const swing = number(['envelope', 'knee'], 'mm');
  const small =
    atKnee === null
      ? say`nothing in the catalog has that swing`
      : say`the smallest in the catalog is ${sizeCost(decision, atKnee, ['envelope', 'atKnee'])}`;
  const large =
    forAll === null
      ? say`Nothing in the catalog holds every family.`
      : say`To hold every family the smallest is ${sizeCost(decision, forAll, ['envelope', 'forAll'])}.`;
  return say`The knee is at a swing of ${swing}; ${small}. ${large}`;
}

/** A rotary, or a machine with its own table, with what its size costs. */
function sizeCost(decision: Decision, { id }: SizeCost, path: Path): readonly Inline[] {
  const idPath = [...path, 'id'];
  const { rotaries, machines } = decision.inputs.catalog;
  const machine = id.replace(/\/built-in$/, '');
  const name = rotaries.some((row) => row.id === id)
    ? rotaryName(decision, id, idPath)
    : machines.some((row) => row.id === machine)
      ? machineName(decision, machine, idPath)
      : [codeData(idPath)];
  const price = number([...path, 'price'], 'money', {
    ifNull: 'price not stated',
  });
  const mass = number([...path, 'mass'], 'kg', { ifNull: 'mass not stated' });
  return say`${name} (swing ${number([...path, 'swing'], 'mm')}${words('; ')}${price}; ${mass})`;
}
