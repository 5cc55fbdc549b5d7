import * as z from 'zod';
import { quoted } from '../printable.ts';
import { faultIn, report } from './fault.ts';
import { jsonFormOf, withJsonForm } from './json-form.ts';
import { isMap } from './strict-map.ts';

interface Branches<Text, List, Group> {
  readonly text?: z.ZodType<Text>;
  readonly list?: z.ZodType<List>;
  readonly map?: z.ZodType<Group>;
}

interface EitherOf {
  readonly means: string;
  readonly expected: string;
  /** for editors: an empty value may stand here, to say that there is none */
  readonly orNull?: boolean;
}

/**
 * A value that is read by what it is: a text, a list or a map, each by its own field; what is wrong with it is
 * said by that one alone.
 */
export function eitherField<Text = never, List = never, Group = never>(
  branches: Branches<Text, List, Group>,
  { means, expected, orNull = false }: EitherOf,
): z.ZodType<Text | List | Group> {
  const { text, list, map } = branches;
  const field = z.unknown().transform((raw, context): Text | List | Group => {
    const branch = isMap(raw) ? map : Array.isArray(raw) ? list : typeof raw === 'string' ? text : undefined;
    if (branch === undefined) {
      const found = raw === undefined || raw === null ? 'is missing' : `is ${quoted(raw)}`;
      report(context, { found, expected });
      return z.NEVER;
    }
    const result = branch.safeParse(raw);
    if (result.success) return result.data;
    for (const issue of result.error.issues) {
      const fault = branch === text ? faultIn(issue) : undefined;
      // a word that is none of its own: what could stand here instead is more than words
      if (fault !== undefined) report(context, { ...fault, expected });
      else context.issues.push({ ...issue, input: raw } as z.core.$ZodRawIssue);
    }
    return z.NEVER;
  });
  return withJsonForm(field, (noted) => ({
    description: means,
    anyOf: [
      ...[text, list, map].flatMap((each) => (each === undefined ? [] : [jsonFormOf(each, noted)])),
      ...(orNull ? [{ type: 'null' }] : []),
    ],
  }));
}
