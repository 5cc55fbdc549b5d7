import { FEATURES, type Feature } from '../../catalog/catalog.ts';
import { BUILT_IN_FIELDS } from './built-in-fields.ts';
import { type ImportField, naming, quantity, range, sizes } from './import-field.ts';

const KINDS = {
  mill: [
    'mill',
    'milling machine',
    'vmc',
    'hmc',
    'machining center',
    'machining centre',
    'vertical machining center',
    'vertical machining centre',
    'horizontal machining center',
    'horizontal machining centre',
    'vertical mill',
    'horizontal mill',
    '3 axis',
    'three axis',
  ],
  convertible: ['convertible', 'mill with rotary', '3+2', '4 axis', '3 axis with rotary'],
  'five-axis': ['five axis', '5 axis', 'five axis machine', '5 axis machine'],
} as const;

const SPINDLES = {
  vertical: [
    'vertical',
    'v',
    'vmc',
    'vertical mill',
    'vertical machining center',
    'vertical machining centre',
  ],
  horizontal: [
    'horizontal',
    'h',
    'hmc',
    'horizontal mill',
    'horizontal machining center',
    'horizontal machining centre',
  ],
} as const;

const FEATURE_WORDS: Readonly<Record<Feature, readonly string[]>> = {
  toolCenterPoint: ['tool center point', 'tool centre point', 'tool center point control', 'tcp'],
  rotatingWorkOffset: ['rotating work offset'],
  tiltedWorkPlane: ['tilted work plane', 'tilted working plane', 'inclined plane'],
  spindleProbe: ['spindle probe', 'probe', 'work probe', 'touch probe'],
  toolSetter: ['tool setter', 'tool probe', 'tool measurement'],
  lookAhead: ['look ahead', 'look ahead contouring', 'high speed contouring', 'high speed machining'],
};

const travels = (axis: string) => [
  `${axis} travel`,
  `travel ${axis}`,
  `${axis} axis travel`,
  `${axis} stroke`,
  axis,
];

/** What a column of a list of machines can be. */
export const MACHINE_FIELDS: readonly ImportField[] = [
  ...naming('machine'),
  {
    path: 'kind',
    cell: { form: 'choice', meanings: KINDS },
    words: ['kind', 'type', 'class', 'category', 'style', 'machine type', 'machine kind'],
  },
  {
    path: 'spindle',
    cell: { form: 'choice', meanings: SPINDLES },
    words: ['spindle', 'spindle direction', 'spindle orientation', 'orientation'],
  },
  ...sizes(
    'travel',
    ['travel', 'travels', 'travel xyz', 'travel x y z'],
    [travels('x'), travels('y'), travels('z')],
  ),
  ...sizes(
    'table.size',
    ['table size', 'table', 'table dimensions'],
    [
      ['table length', 'table x', 'table size x', 'table along x'],
      ['table width', 'table depth', 'table y', 'table size y', 'table along y'],
    ],
  ),
  quantity('table.height', 'length', 'table height', 'table above floor', 'height of table'),
  quantity(
    'table.load',
    'mass',
    'table load',
    'max table load',
    'table capacity',
    'load capacity',
    'max load',
    'load',
  ),
  quantity(
    'table.slots.count',
    'count',
    't slots',
    't slot count',
    'number of t slots',
    'slots',
    'slot count',
    't slot number',
  ),
  quantity('table.slots.width', 'length', 't slot width', 'slot width', 'width of slots'),
  quantity(
    'table.slots.pitch',
    'length',
    't slot pitch',
    'slot pitch',
    't slot spacing',
    'slot spacing',
    't slot distance',
  ),
  {
    path: 'table.slots.center',
    cell: { form: 'flag' },
    words: ['slot in center', 'center slot', 't slot center'],
  },
  {
    path: 'table.slots.along',
    cell: { form: 'choice', meanings: { x: ['x', 'along x'], y: ['y', 'along y'] } },
    words: ['slots along', 't slots along', 'slot direction', 't slot direction'],
  },
  ...range(
    'noseToTable',
    'length',
    ['nose to table', 'spindle nose to table', 'spindle to table', 'spindle nose to table top'],
    ['nose to table min', 'spindle nose to table min', 'spindle to table min', 'nose to table low'],
    ['nose to table max', 'spindle nose to table max', 'spindle to table max', 'nose to table high'],
  ),
  ...range(
    'spindleToTable',
    'length',
    ['spindle center to table', 'spindle centerline to table'],
    ['spindle center to table min'],
    ['spindle center to table max'],
  ),
  {
    path: 'rotaryIncluded',
    cell: { form: 'text', orNone: true },
    words: ['rotary included', 'included rotary', 'comes with rotary'],
  },
  quantity('throat', 'length', 'throat', 'throat depth', 'spindle to column', 'spindle center to column'),
  quantity('noseDiameter', 'length', 'nose diameter', 'spindle nose diameter'),
  quantity(
    'spindleDrive.power',
    'power',
    'spindle power',
    'power',
    'motor power',
    'rated power',
    'spindle motor',
  ),
  quantity('spindleDrive.torque', 'torque', 'spindle torque', 'torque', 'rated torque'),
  quantity('spindleDrive.speed', 'rotation', 'spindle speed', 'max spindle speed', 'speed', 'rpm', 'max rpm'),
  {
    path: 'spindleDrive.taper',
    cell: { form: 'text' },
    words: ['taper', 'spindle taper', 'tool taper', 'tool holder', 'tool interface'],
  },
  quantity('positioning', 'length', 'positioning', 'positioning accuracy', 'linear positioning', 'accuracy'),
  quantity('axisDrives.fitted', 'count', 'axis drives fitted', 'drives fitted', 'rotary drives fitted'),
  quantity('axisDrives.offered', 'count', 'axis drives offered', 'drives offered', 'rotary drives offered'),
  quantity(
    'axisDrives.priceEach',
    'money',
    'axis drive price',
    'axis drives price each',
    'price per drive',
    'drive price',
  ),
  ...FEATURES.map(
    (feature): ImportField => ({
      path: `features.${feature}`,
      cell: { form: 'feature' },
      words: FEATURE_WORDS[feature],
    }),
  ),
  quantity('blocks.standard', 'count', 'blocks standard', 'block rate', 'blocks per second', 'blocks s'),
  quantity('blocks.lookAhead', 'count', 'blocks look ahead', 'blocks per second with look ahead'),
  quantity('blocks.ahead', 'count', 'blocks ahead', 'blocks read ahead'),
  quantity(
    'blocks.aheadWithLookAhead',
    'count',
    'blocks ahead with look ahead',
    'blocks read ahead with look ahead',
  ),
  quantity('acceleration', 'acceleration', 'acceleration', 'axis acceleration', 'linear acceleration'),
  {
    path: 'clearance',
    cell: { form: 'additions', of: 'length' },
    words: ['clearance', 'clearance additions'],
  },
  ...sizes(
    'footprint',
    ['footprint', 'machine size', 'machine dimensions', 'floor space'],
    [
      ['footprint width', 'machine width', 'width'],
      ['footprint depth', 'machine depth', 'depth'],
      ['footprint height', 'machine height', 'height', 'overall height'],
    ],
  ),
  ...(['left', 'right', 'front', 'rear'] as const).map((side) =>
    quantity(`service.${side}`, 'length', `service ${side}`, `service room ${side}`, `service space ${side}`),
  ),
  ...sizes(
    'shipping',
    ['shipping size', 'shipping', 'shipping dimensions', 'transport size'],
    [
      ['shipping length', 'transport length'],
      ['shipping width', 'transport width'],
      ['shipping height', 'transport height'],
    ],
  ),
  quantity('mass', 'mass', 'mass', 'machine mass', 'net mass'),
  quantity(
    'power.kVA',
    'apparentPower',
    'connected load',
    'kva',
    'power',
    'power supply',
    'supply',
    'electrical load',
  ),
  quantity('power.volts', 'voltage', 'voltage', 'volts', 'supply voltage'),
  quantity('power.phases', 'count', 'phases', 'supply phases'),
  quantity('air.flow', 'airFlow', 'air flow', 'air consumption', 'air', 'compressed air'),
  quantity('air.bar', 'pressure', 'air pressure', 'pressure'),
  quantity('price', 'money', 'price', 'list price', 'cost', 'machine price', 'base price', 'unit price'),
  ...BUILT_IN_FIELDS,
];
