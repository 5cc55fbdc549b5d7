import type { Catalog } from '../catalog/catalog.ts';
import { readCarriedCatalog } from '../catalog/read-carried.ts';
import { isMap } from '../documents/fields/strict-map.ts';
import type { Problem, Reading } from '../documents/problem.ts';
import type { Answers } from '../questions/answers.ts';
import { readCarriedAnswers } from '../questions/read-carried.ts';
import { decide } from '../rules/decide.ts';
import type { Decision } from '../rules/decision.ts';

/** What an export carries so that anybody can decide again. */
export interface Carried {
  readonly answers: Answers;
  readonly catalog: Catalog;
  readonly shownIn: 'mm' | 'inch';
  /** the arrangements that it lists */
  readonly listed: readonly string[];
}

/** Where the inputs begin in the file, for problems. */
export interface CarriedAt {
  readonly file: string;
  readonly line: number;
}

/** Reads answers and catalog by the rules of their own files. Every problem at once; never throws. */
export function readCarried(raw: unknown, listed: readonly string[], at: CarriedAt): Reading<Carried> {
  const inputs: Readonly<Record<string, unknown>> = isMap(raw) ? raw : {};
  const catalog = readCarriedCatalog(inputs.catalog, at.file);
  const beside = catalog.ok ? catalog.value : { machines: [], currency: 'unknown' };
  const answers = readCarriedAnswers(inputs.answers, at.file, beside);
  if (!catalog.ok || !answers.ok) {
    // without the catalog nothing can be held against it
    const ofAnswers = answers.ok || !catalog.ok ? [] : answers.problems;
    return {
      ok: false,
      problems: [
        ...(catalog.ok ? [] : catalog.problems.map((each) => placed(each, 'inputs.catalog', at))),
        ...ofAnswers.map((each) => placed(each, 'inputs.answers', at)),
      ],
    };
  }
  return {
    ok: true,
    value: {
      answers: answers.value,
      catalog: catalog.value,
      shownIn: inputs.shownIn === 'inch' ? 'inch' : 'mm',
      listed,
    },
  };
}

const placed = (problem: Problem, inside: string, { file, line }: CarriedAt): Problem => ({
  ...problem,
  file,
  line,
  column: 1,
  found: `in ${inside} ${problem.found}`,
});

/** The decision on what was carried, with the arrangements listed that the export lists. */
export const decideAgain = ({ answers, catalog, shownIn, listed }: Carried): Decision =>
  decide(answers, catalog, { shownIn, flips: [], ranges: true, also: listed });
