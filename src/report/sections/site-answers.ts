import type { Lifting } from '../../questions/answers.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Inline, joined, number, say } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import type { SiteRow } from '../wording/site.ts';

type Said = readonly Inline[];

const SHOP: Path = ['inputs', 'answers', 'shop'];
const shop = (unit: string, ...keys: Path): Inline => number([...SHOP, ...keys], unit);

/** What the answers say of the building, row by row; 'not known' where they say nothing. */
export const siteAnswers = (decision: Decision): Readonly<Record<SiteRow, Said>> => ({
  bay: say`${shop('mm', 'bay', 0)} by ${shop('mm', 'bay', 1)}`,
  ceiling: [shop('mm', 'ceiling')],
  doorway: say`${shop('mm', 'doorway', 'width')} wide, ${shop('mm', 'doorway', 'height')} high`,
  'door-sill': [shop('mm', 'doorSill')],
  floor: [shop('kPa', 'floorRating')],
  power: say`free load: ${shop('kVA', 'power', 'kVA')}, voltage: ${shop('V', 'power', 'volts')}, phases: ${shop('', 'power', 'phases')}`,
  air: say`flow: ${shop('L/min', 'air', 'flow')}, pressure: ${shop('bar', 'air', 'bar')}`,
  lifting: means(decision, meansLine, 'nothing to lift with'),
  hook: means(
    decision,
    ({ by }, at) => (by === 'hoist' ? [number([...at, 'hookHeight'], 'mm')] : []),
    'no hoist',
  ),
});

/** Each means of lifting as `line` says it; what it has nothing to say of is left out. */
function means(
  { inputs }: Decision,
  line: (means: Lifting, at: Path) => Said,
  none: 'nothing to lift with' | 'no hoist',
): Said {
  const { lifting } = inputs.answers.shop;
  if (lifting === 'unknown') return say`not known`;
  const lines = lifting.flatMap((each, index) => {
    const said = line(each, [...SHOP, 'lifting', index]);
    return said.length === 0 ? [] : [said];
  });
  if (lines.length > 0) return joined(lines);
  return none === 'no hoist' ? say`no hoist` : say`nothing to lift with`;
}

function meansLine({ by }: Lifting, at: Path): Said {
  const of = (key: string, unit: string): Inline => number([...at, key], unit);
  switch (by) {
    case 'hand':
      return say`by hand, people: ${of('people', '')}`;
    case 'hoist':
      return say`hoist, rated ${of('capacity', 'kg')}, rigging ${of('rigging', 'kg')}, legs of the sling: ${of('legs', '')}`;
    case 'forklift':
      return say`forklift, rated ${of('capacity', 'kg')} at a load center of ${of('loadCenter', 'mm')}`;
  }
}
