import { formatInterval, formatQuantity } from '../quantities/format-quantity.ts';
import type { Interval } from '../quantities/interval.ts';
import { BASE_UNITS, type LengthUnits, type QuantityKind } from '../quantities/kinds.ts';
import type { Uncertain } from './answers.ts';
import type { Field, Offer, Question, Value } from './question.ts';

export interface DescribeContext {
  readonly offer: Offer;
  readonly currency: string;
  /** inches: both are shown */
  readonly units: LengthUnits;
  /** which of both stands first; default mm */
  readonly first?: LengthUnits;
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
      return describeSeveral(value as readonly Uncertain[], field, context);
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
      return field.kind === 'yes-no' ? 'both are considered' : 'each of them is considered';
    case 'computed':
      return unsure.words;
    case 'value':
      return `taken as ${unsure.words}`;
  }
}

/** Numbers in one line; where all are known, the unit once: `90 x 60 x 55 mm (3.543 x 2.362 x 2.165 in)`. */
function describeSeveral(
  values: readonly Uncertain[],
  { of, names }: Extract<Field, { kind: 'quantities' }>,
  context: DescribeContext,
): string {
  const separator = names === null ? ', ' : ' x ';
  const known = values.filter((value) => typeof value === 'number');
  const unit = BASE_UNITS[of];
  if (names === null || known.length < values.length) {
    return values.map((each) => describeUncertain(each, of, context)).join(separator);
  }
  const inOne = (shownIn: LengthUnits): string => {
    const texts = known.map((value) => formatQuantity(value, unit, { shownIn }));
    const symbol = texts[0]?.split(' ').at(-1) ?? '';
    return `${texts.map((text) => text.slice(0, -symbol.length).trim()).join(separator)} ${symbol}`;
  };
  if (context.units === 'mm') return inOne('mm');
  const [first, second] = context.first === 'inch' ? (['inch', 'mm'] as const) : (['mm', 'inch'] as const);
  return `${inOne(first)} (${inOne(second)})`;
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

const formatOptions = ({ units, first = 'mm', currency }: DescribeContext) => ({
  shownIn: units,
  first,
  beside: true,
  grouped: 'plain' as const,
  currency: currency === 'unknown' ? '' : currency,
});
