import { choiceField, flagField } from '../documents/fields/plain-fields.ts';
import { pairField, quantitiesIn, statedField } from '../documents/fields/quantity-fields.ts';
import { optionalMap } from '../documents/fields/strict-map.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { LEANS } from './catalog.ts';
import { tableMechanicsShape } from './table-mechanics-schema.ts';

/** The table that is built into a five-axis machine. */
export function builtInField(units: LengthUnits) {
  const of = quantitiesIn(units);
  const range = (means: string) => pairField(of('length', { least: -1e5, most: 1e5 }, means));
  const length = (means: string) => statedField(of('length', { above: 0, most: 1e5 }, means));
  return optionalMap(
    {
      ...tableMechanicsShape(units),
      tiltAxis: choiceField(['along-x', 'along-y'], 'direction of the tilt axis', 'unknown'),
      leans: choiceField(
        LEANS,
        'which way the top of the work (horizontal spindle: its end toward the spindle) leans at positive tilt',
        'unknown',
      ),
      reach: optionalMap(
        {
          x: range('spindle positions along X, from the rotary center'),
          y: range('spindle positions along Y, from the rotary center'),
          noseToFace: range('spindle nose above the faceplate, bottom and top of Z'),
        },
        { means: 'where the spindle gets to' },
      ),
      removable: flagField('whether it can be taken out', 'unknown'),
      slots: optionalMap(
        { width: length('width of a slot'), pitch: length('from slot to slot') },
        { means: 'slots of the faceplate' },
      ),
    },
    { means: 'the built-in table', noneIsSaid: ['faceplate', 'tilt'] },
  );
}
