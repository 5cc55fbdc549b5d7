import type { Class } from '../../catalog/catalog.ts';
import type { Answers, Part } from '../../questions/answers.ts';
import type { Family } from '../arranging/family.ts';
import type { RotaryCase, ShopCase } from '../judging/case.ts';
import type { Judged } from '../weighing/judged.ts';

/** What the rules of the class read: the mix, the shop, and what the catalog offers of one class. */
export interface ClassGround {
  readonly class: Class;
  readonly answers: Answers;
  readonly shop: ShopCase;
  /** the five-axis families, most hours first */
  readonly families: readonly Family[];
  readonly partOf: (family: Family) => Part;
  /** the arrangements of this class */
  readonly judged: readonly Judged[];
  /** their rotaries and built-in tables, each once */
  readonly tables: readonly RotaryCase[];
}

/** The ground for one class; `all` holds the arrangements and the tables of every class. */
export function groundFor(
  ofClass: Class,
  answers: Answers,
  shop: ShopCase,
  families: readonly Family[],
  all: { readonly judged: readonly Judged[]; readonly tables: readonly RotaryCase[] },
): ClassGround {
  return {
    class: ofClass,
    answers,
    shop,
    families: [...families].sort((a, b) => b.hours.high - a.hours.high || (a.name < b.name ? -1 : 1)),
    partOf: (family) => {
      const part = answers.parts.find(({ name }) => name === family.name);
      if (part === undefined) throw new Error(`no part ${family.name}`);
      return part;
    },
    judged: all.judged.filter(({ setUp }) => setUp.candidate.rotary.class === ofClass),
    tables: all.tables.filter((each) => each.class === ofClass),
  };
}
