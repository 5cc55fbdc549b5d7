import { formatInterval } from '../quantities/format-quantity.ts';
import type { Interval } from '../quantities/interval.ts';
import { BASE_UNITS, type LengthUnits, type QuantityKind } from '../quantities/kinds.ts';
import type { Uncertain } from './answers.ts';
import type { Field, Offer, Question, Value } from './question.ts';

export interface DescribeContext {
  readonly offer: Offer;
  readonly currency: string;
  /** inches: both are shown, millimeters first */
  readonly units: LengthUnits;
}

/** An answer in words. Example: a length of 88.9 where inches are asked for → '88.9 mm (3.5 in)'. */
export function describeValue(field: Field, value: Value, context: DescribeContext): string {
  if (value === 'unknown') return 'not sure';
  switch (field.kind) {
    case 'yes-no':
      return value === true ? 'yes' : 'no';
    case 'text':
      return String(value);
    case 'quantity':
      return describeUncertain(value as Uncertain, field.of, context);
    case 'quantities':
      return (value as readonly Uncertain[])
        .map((each) => describeUncertain(each, field.of, context))
        .join(field.names === null ? ', ' : ' x ');
    default: {
      const options = field.options(context.offer);
      const label = (id: unknown) => options.find((option) => option.value === id)?.label ?? String(id);
      return Array.isArray(value) ? value.map(label).join(', ') : label(value);
    }
  }
}

/** What 'not sure' stands for, in words. Example: → 'anything from 0 to 150 mm'. */
export function describeUnsure({ field, unsure }: Question, context: DescribeContext): string {
  switch (unsure.as) {
    case 'range':
      return field.kind === 'quantity' || field.kind === 'quantities'
        ? describeRange(unsure.range, field.of, context)
        : '';
    case 'each-kind':
      return 'each of them is considered';
    case 'computed':
    case 'value':
      return unsure.words;
  }
}

function describeRange(range: Interval, kind: QuantityKind, context: DescribeContext): string {
  const words = formatInterval(range, BASE_UNITS[kind], formatOptions(context));
  if (range.high !== Number.POSITIVE_INFINITY) return `anything from ${words}`;
  return range.low <= 0 ? 'no limit' : `anything from ${words} up`;
}

function describeUncertain(value: Uncertain, kind: QuantityKind, context: DescribeContext): string {
  if (value === 'unknown') return 'not sure';
  const interval =
    typeof value === 'number' ? { low: value, high: value } : { low: value[0], high: value[1] };
  return formatInterval(interval, BASE_UNITS[kind], formatOptions(context)).trim();
}

const formatOptions = ({ units, currency }: DescribeContext) => ({
  shownIn: units,
  beside: true,
  grouped: 'plain' as const,
  currency: currency === 'unknown' ? '' : currency,
});
