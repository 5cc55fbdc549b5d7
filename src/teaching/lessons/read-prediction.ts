import { describeFault } from '../../quantities/describe-fault.ts';
import { BASE_UNITS, type LengthUnits, type QuantityKind } from '../../quantities/kinds.ts';
import { parseQuantity } from '../../quantities/parse-quantity.ts';
import { bareUnit } from '../../quantities/units.ts';
import { matchOption } from '../../questions/match-option.ts';
import { sentenceCase } from '../../report/wording/sentence-case.ts';
import type { StepKey } from './step-key.ts';

/** What somebody predicts, read; or a sentence on what is accepted. */
export type PredictionReading =
  | { readonly ok: true; readonly value: number | string }
  | { readonly ok: false; readonly why: string };

const KINDS = Object.keys(BASE_UNITS) as readonly QuantityKind[];

/** What a number in this unit is a number of; a unit that nobody types is left out. */
const kindOf = (unit: string): QuantityKind => KINDS.find((kind) => BASE_UNITS[kind] === unit) ?? 'count';

/**
 * Reads what is typed for a step: a number in any unit of its kind, or one of the words by its number or its beginning.
 * Example: '3.5 in' for a length → 88.9; '2' for a verdict → 'holds if'.
 */
export function readPrediction(key: StepKey, typed: string, units: LengthUnits): PredictionReading {
  const text = typed.trim();
  if (text === '')
    return { ok: false, why: 'Nothing is predicted yet: type what you think, or "hint", or "reveal".' };
  if (key.kind === 'choice') {
    const options = key.options.map((value) => ({ value, label: value, about: '' }));
    const found = matchOption(options, text);
    return found.ok ? { ok: true, value: found.value } : { ok: false, why: found.why };
  }
  return readNumber(text, key.unit, units);
}

/** A number in any unit of the kind that `unit` is one of; or a sentence on what is accepted. Example: '3.5 in' of mm → 88.9. */
export function readNumber(
  text: string,
  unit: string,
  units: LengthUnits,
): { readonly ok: true; readonly value: number } | { readonly ok: false; readonly why: string } {
  const kind = kindOf(unit);
  const read = parseQuantity(text, { kind, units });
  if (read.ok) return { ok: true, value: read.value };
  const { found, expected } = describeFault(read.fault, units);
  return { ok: false, why: `${sentence(found)} ${sentence(expected)}`.trim() };
}

/** The unit that a number without one is taken in. Example: unitTyped('mm', 'inch') → 'in'. */
export const unitTyped = (unit: string, units: LengthUnits): string => bareUnit(kindOf(unit), units).symbol;

const sentence = (clause: string): string =>
  clause === '' ? '' : `${sentenceCase(clause).replace(/\.$/, '')}.`;
