import { isMap } from '../documents/fields/strict-map.ts';
import { type Reading, wholeFile } from '../documents/problem.ts';
import type { Answers } from './answers.ts';
import type { BesideCatalog } from './beside-catalog.ts';
import { readAnswers } from './read-answers.ts';

/**
 * Reads the answers that a decision carries: as an answers file, by the same rules. A decision names every key, so
 * that a size which a part of its shape does not have stands there as not known, and is left out here. Lines in
 * problems are those of the answers alone. Never throws.
 */
export function readCarriedAnswers(carried: unknown, file: string, catalog: BesideCatalog): Reading<Answers> {
  if (!isMap(carried))
    return wholeFile(file, 'there are no answers', 'expected the answers that were decided on');
  const { parts } = carried;
  const written = { ...carried, ...(Array.isArray(parts) ? { parts: parts.map(asWritten) } : {}) };
  const reading = readAnswers(file, JSON.stringify(written, null, 1), catalog);
  return reading.ok ? { ok: true, value: reading.value.answers } : reading;
}

const SIZES: ReadonlySet<string> = new Set(['size', 'diameter', 'length']);

const asWritten = (part: unknown): unknown =>
  isMap(part)
    ? Object.fromEntries(
        Object.entries(part).filter(([key, value]) => !(SIZES.has(key) && isNotKnown(value))),
      )
    : part;

const isNotKnown = (value: unknown): boolean =>
  value === 'unknown' || (Array.isArray(value) && value.every((each) => each === 'unknown'));
