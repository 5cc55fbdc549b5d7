import fc from 'fast-check';
import type { Limits } from '../../src/quantities/faults.ts';
import { roundSignificant } from '../../src/quantities/round-significant.ts';
import type { Field, Offer, Value } from '../../src/questions/question.ts';

export const OFFER: Offer = {
  machines: [
    { id: 'rowan', name: 'Rowan', kind: 'mill' },
    { id: 'yew', name: 'Yew', kind: 'five-axis' },
  ],
};

/** Any value that a field can hold, 'unknown' left out. */
export function valuesOf(field: Field): fc.Arbitrary<Value> {
  switch (field.kind) {
    case 'yes-no':
      return fc.boolean();
    case 'text':
      return fc.constantFrom('Lock gate hinge', 'Valve body', 'Rudder pintle');
    case 'choice':
      return fc.constantFrom(...field.options(OFFER).map(({ value }) => value));
    case 'list':
      return fc
        .subarray(
          field.options(OFFER).map(({ value }) => value),
          { minLength: 1 },
        )
        .filter((values) => values.length === 1 || !values.some((value) => value === field.alone));
    case 'order': {
      const values = field.options(OFFER).map(({ value }) => value);
      return fc.shuffledSubarray(values, { minLength: values.length });
    }
    case 'quantity':
      return uncertain(field.limits);
    case 'quantities': {
      const length = field.names?.length;
      return fc.array(uncertain(field.limits), { minLength: length ?? 1, maxLength: length ?? 3 });
    }
  }
}

/** As people write them: whole thousandths. */
function uncertain(limits: Limits): fc.Arbitrary<number | [number, number]> {
  const step = limits.whole === true ? 1 : 0.001;
  const low = limits.least ?? (limits.above ?? 0) + step;
  const high = limits.most ?? low + 1000;
  const number = fc
    .integer({ min: Math.ceil(low / step), max: Math.floor(high / step) })
    .map((count) => roundSignificant(count * step));
  const range = fc.tuple(number, number).map(([a, b]): [number, number] => [Math.min(a, b), Math.max(a, b)]);
  return fc.oneof(
    number,
    range.filter(([from, to]) => from < to),
  );
}
