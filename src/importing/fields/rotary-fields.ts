import { MOUNTINGS } from '../../catalog/catalog.ts';
import { type ImportField, naming, noneOrQuantity, quantity } from './import-field.ts';
import { tableFields } from './table-fields.ts';

const CLASSES = {
  'collet-indexer': ['collet indexer', 'indexer', 'collet index head'],
  'single-axis': ['single axis', 'one axis', '1 axis', '4th axis', 'fourth axis', 'rotary table', 'rotary'],
  'single-support': [
    'single support',
    'two axis single support',
    'cantilever',
    'overhung',
    'tilting single support',
  ],
  trunnion: ['trunnion', 'two axis trunnion', 'trunnion table', 'double support', 'two supports'],
} as const;

/** What a column of a list of rotaries can be. */
export const ROTARY_FIELDS: readonly ImportField[] = [
  ...naming('rotary'),
  {
    path: 'class',
    cell: { form: 'choice', meanings: CLASSES },
    words: ['class', 'type', 'kind', 'category', 'rotary class', 'rotary type'],
  },
  ...tableFields(),
  { path: 'nose', cell: { form: 'text', orNone: true }, words: ['nose', 'spindle nose', 'nose type'] },
  noneOrQuantity('collet', 'length', 'collet', 'collet capacity', 'largest bar', 'bar capacity', 'max bar'),
  quantity(
    'centerHeight',
    'length',
    'center height',
    'centre height',
    'axis height',
    'height of center',
    'spindle center height',
    'tilt axis height',
  ),
  quantity('base.along', 'length', 'base along', 'base length', 'length of base', 'base along axis'),
  quantity(
    'base.across',
    'length',
    'base across',
    'base width',
    'width of base',
    'base depth',
    'base across axis',
  ),
  quantity('base.centerAlong', 'length', 'base center along', 'center along', 'center from end'),
  quantity('base.centerAcross', 'length', 'base center across', 'center across', 'center from side'),
  { path: 'housing', cell: { form: 'boxes', of: 'length' }, words: ['housing', 'housing boxes'] },
  quantity('mass', 'mass', 'mass', 'net mass', 'rotary mass', 'unit mass', 'shipping mass'),
  ...MOUNTINGS.flatMap((mounting): ImportField[] => {
    const words = mounting.replaceAll('-', ' ');
    return [
      {
        path: `hold.${mounting}`,
        cell: { form: 'mounting' },
        words: [words, `hold ${words}`, `mounting ${words}`],
      },
      quantity(`hold.${mounting}.keyWidth`, 'length', `key width ${words}`, `hold ${words} key width`),
      {
        path: `hold.${mounting}.pitches`,
        cell: { form: 'quantities', of: 'length' },
        words: [`bolt pitches ${words}`, `pitches ${words}`, `bolt pitch ${words}`, `hold ${words} pitches`],
      },
    ];
  }),
  quantity('height', 'length', 'height', 'overall height', 'total height'),
  quantity('tailstock.length', 'length', 'tailstock length'),
  quantity('tailstock.price', 'money', 'tailstock price'),
  quantity('liftingPoints', 'count', 'lifting points', 'lifting eyes', 'eye bolts'),
  quantity('air.bar', 'pressure', 'air', 'air pressure', 'pressure'),
  quantity('price', 'money', 'price', 'list price', 'cost', 'unit price', 'net price'),
];
