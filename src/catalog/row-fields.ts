import { textField } from '../documents/fields/plain-fields.ts';
import { quantitiesIn, statedField } from '../documents/fields/quantity-fields.ts';
import type { LengthUnits } from '../quantities/kinds.ts';

/** Ids go into `machine+rotary/mounting` and into paths, so they hold no sign that those use. */
export const idField = () =>
  textField({
    means: 'the id of the row',
    fits: /^(?!(?:none|unknown|built-in)$)[A-Za-z0-9][A-Za-z0-9._-]*$/,
    expected: 'letters, digits, dot, hyphen and underscore (and not none, unknown or built-in)',
    longest: 60,
  });

export const nameField = () => textField({ means: 'the name of the row', longest: 80 });

/** In the currency of the file. */
export const priceField = (units: LengthUnits, means: string) =>
  statedField(quantitiesIn(units)('money', { least: 0, most: 1e9 }, means));
