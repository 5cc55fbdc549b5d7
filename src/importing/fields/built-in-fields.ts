import { type ImportField, quantity, range } from './import-field.ts';
import { tableFields } from './table-fields.ts';

/** What a column can be of the table that is built into a five-axis machine. */
export const BUILT_IN_FIELDS: readonly ImportField[] = [
  ...tableFields('builtIn.').map((field) => ({
    ...field,
    // what a machine may have besides its own values is called by both
    words: field.words.flatMap((words) => {
      if (words.startsWith('?')) return [`?built in ${words.slice(1)}`];
      return /faceplate|swing|tilt/.test(words) ? [words, `built in ${words}`] : [`built in ${words}`];
    }),
  })),
  {
    path: 'builtIn.tiltAxis',
    cell: {
      form: 'choice',
      meanings: { 'along-x': ['along x', 'x', 'a'], 'along-y': ['along y', 'y', 'b'] },
    },
    words: ['tilt axis', 'built in tilt axis'],
  },
  {
    path: 'builtIn.leans',
    cell: {
      form: 'choice',
      meanings: {
        'toward-door': ['toward door', 'door'],
        'toward-column': ['toward column', 'column'],
        'toward-left': ['toward left', 'left'],
        'toward-right': ['toward right', 'right'],
        downward: ['downward', 'down'],
        upward: ['upward', 'up'],
      },
    },
    words: ['leans', 'built in leans'],
  },
  ...range('builtIn.reach.x', 'length', ['reach x', 'built in reach x'], ['reach x min'], ['reach x max']),
  ...range('builtIn.reach.y', 'length', ['reach y', 'built in reach y'], ['reach y min'], ['reach y max']),
  ...range(
    'builtIn.reach.noseToFace',
    'length',
    ['nose to faceplate', 'nose to face', 'built in reach nose to face', 'spindle nose to faceplate'],
    ['nose to faceplate min', 'nose to face min'],
    ['nose to faceplate max', 'nose to face max'],
  ),
  {
    path: 'builtIn.removable',
    cell: { form: 'flag' },
    words: ['removable', 'built in removable', 'table removable'],
  },
  quantity('builtIn.slots.width', 'length', 'faceplate slot width', 'built in slots width'),
  quantity('builtIn.slots.pitch', 'length', 'faceplate slot pitch', 'built in slots pitch'),
];
