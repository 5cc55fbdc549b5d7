import type { QuantityKind } from '../quantities/kinds.ts';
import { bareUnit, UNITS } from '../quantities/units.ts';
import type { Option } from '../questions/question.ts';
import type { Session } from './session.ts';
import type { Item } from './survey.ts';
import { unitsOf, type World } from './world.ts';

/** What a question takes, for a shell to offer. */
export type Input =
  | { readonly kind: 'choice' | 'list' | 'order'; readonly options: readonly Option[] }
  | { readonly kind: 'yes-no' }
  | { readonly kind: 'text' }
  /** `bare`: the unit of a number without one; `names`: several numbers in one line, what each is */
  | {
      readonly kind: 'quantity';
      readonly bare: string;
      readonly units: readonly string[];
      readonly names: readonly string[] | null;
    };

/** What the question takes, in the units of the interview. */
export function inputOf({ question: { field } }: Item, session: Session, world: World): Input {
  switch (field.kind) {
    case 'quantity':
    case 'quantities':
      return {
        kind: 'quantity',
        bare: bareWords(field.of, session, world),
        units: UNITS[field.of].map((unit) => unit.symbol),
        names: field.kind === 'quantities' ? (field.names ?? []) : null,
      };
    case 'yes-no':
    case 'text':
      return { kind: field.kind };
    default:
      return { kind: field.kind, options: field.options(world.setting.offer) };
  }
}

/** What a number without a unit is. Money is in that of the catalog; a share says how both ways are written. */
function bareWords(of: QuantityKind, { kept }: Session, { setting: { currency } }: World): string {
  if (of === 'money') return currency === 'unknown' ? '' : currency;
  if (of === 'share') return '% or part of 1';
  return bareUnit(of, unitsOf(kept)).symbol;
}
