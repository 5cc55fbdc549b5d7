import type { Catalog } from '../catalog/catalog.ts';
import type { Answers } from '../questions/answers.ts';
import type { Decision } from './decision.ts';

export interface DecideOptions {
  /** list every arrangement, not only the ones worth reading */
  readonly all?: boolean;
  readonly shownIn?: 'mm' | 'inch';
}

/** The door: answers and catalog in, the whole decision out. Pure and synchronous. */
export function decide(answers: Answers, catalog: Catalog, options: DecideOptions = {}): Decision {
  throw new Error(`not built yet: ${answers.parts.length} ${catalog.machines.length} ${options.all}`);
}
