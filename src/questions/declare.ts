import type { Part } from './answers.ts';
import { fits } from './fits.ts';
import type { Draft, Field, Offer, PartDraft, Question, ShopDraft, Value } from './question.ts';

/** A question that is asked once for each part. */
export function aboutPart<Kind extends Value>(draft: PartDraft<Kind>): Question {
  const partAt = (parts: readonly Part[], index: number): Part => {
    const part = parts[index];
    if (part === undefined) throw new RangeError(`${draft.id}: there is no part ${index}`);
    return part;
  };
  return {
    ...described(draft),
    of: 'part',
    applies: (answers, index) => draft.applies?.(partAt(answers.parts, index)) ?? true,
    objection: (answers, index, value) =>
      draft.objection?.(partAt(answers.parts, index), ofKind<Kind>(draft, value)) ?? null,
    get: (answers, index) => draft.get(partAt(answers.parts, index)),
    set: (answers, index, value) => {
      const changed = draft.set(partAt(answers.parts, index), ofKind<Kind>(draft, value));
      return { ...answers, parts: answers.parts.with(index, changed) };
    },
  };
}

/** A question that is asked once. */
export function aboutShop<Kind extends Value>(draft: ShopDraft<Kind>): Question {
  return {
    ...described(draft),
    of: 'shop',
    applies: (answers) => draft.applies?.(answers) ?? true,
    objection: (answers, _index, value) => draft.objection?.(answers, ofKind<Kind>(draft, value)) ?? null,
    get: (answers) => draft.get(answers),
    set: (answers, _index, value) => draft.set(answers, ofKind<Kind>(draft, value)),
  };
}

function described<Kind extends Value, Subject>(draft: Draft<Kind, Subject>) {
  const { id, section, title, path, ask, why, readBy, field, unsure } = draft;
  return {
    id,
    section,
    title,
    path,
    ask,
    hint: draft.hint ?? '',
    hintInch: draft.hintInch ?? draft.hint ?? '',
    why,
    readBy,
    field,
    unsure,
    preset: draft.preset ?? null,
  };
}

/** The field is what ties a draft's `Kind` to what is checked here; the machine of a shop is checked by who knows the catalog. */
function ofKind<Kind extends Value>(
  draft: { readonly id: string; readonly field: Field },
  value: Value,
): Kind {
  const anyMachine: Offer = {
    machines: typeof value === 'string' && value !== '' ? [{ id: value, name: value, kind: '' }] : [],
  };
  if (!fits(draft.field, value, anyMachine)) {
    throw new TypeError(`${draft.id} cannot be ${JSON.stringify(value)}`);
  }
  return value as Kind;
}
