import type * as z from 'zod';

/** What is wrong with a value of a file: the clause after its name, what is expected instead, the near word. */
export interface FieldFault {
  /** e.g. `is "cube"` */
  readonly found: string;
  readonly expected: string;
  readonly didYouMean?: string | undefined;
  /** where it stands inside the value that was read */
  readonly path?: readonly (string | number)[];
  /** the key is what is wrong, not the value */
  readonly atKey?: boolean;
}

/** Either a value, or every fault that stands in the way. */
export type Read<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly faults: readonly FieldFault[] };

export const accepted = <Value>(value: Value): Read<Value> => ({ ok: true, value });
export const refused = (...faults: FieldFault[]): Read<never> => ({ ok: false, faults });

type Context = z.core.$RefinementCtx;

/** Reports a fault to zod. */
export function report(context: Context, fault: FieldFault): void {
  const path = [...(fault.path ?? [])];
  context.addIssue({ code: 'custom', message: fault.found, params: { fault }, path, input: context.value });
}

/** The fault that `report` put into an issue; undefined for an issue of zod's own. */
export function faultIn(issue: z.core.$ZodIssue): FieldFault | undefined {
  const fault: unknown = issue.code === 'custom' ? issue.params?.fault : undefined;
  return isFault(fault) ? fault : undefined;
}

const isFault = (value: unknown): value is FieldFault =>
  typeof value === 'object' && value !== null && 'found' in value && 'expected' in value;
