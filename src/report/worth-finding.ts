import type { Decision, Unknown } from '../rules/decision.ts';
import { type Inline, say, words } from './blocks/inline.ts';
import { valueName } from './value-name.ts';
import { isKind } from './value-words.ts';
import { SITE_WORDS, type SiteRow } from './wording/site.ts';

/** What would be worth finding out, and whom to ask. */
export interface WorthFinding {
  readonly name: readonly Inline[];
  readonly ask: Unknown['ask'];
  readonly isKind: boolean;
  /** how to get it, or who knows */
  readonly whom: string;
}

/** As many as are read and remembered. */
const ORDINALS = ['first', 'second', 'third'] as const;

/**
 * The answers most worth finding out while the result is open: what decides, in its order. The numbers of one question
 * (length, width, height) count once.
 */
export function worthFinding(decision: Decision): readonly WorthFinding[] {
  const found = new Map<string, { readonly unknown: Unknown; readonly index: number; count: number }>();
  decision.unknowns.forEach((unknown, index) => {
    if (!unknown.decides) return;
    const asked = unknown.answer.replace(/\[\d+\]$/, '');
    const known = found.get(asked);
    if (known === undefined) found.set(asked, { unknown, index, count: 1 });
    else known.count += 1;
  });
  return [...found].slice(0, ORDINALS.length).map(([asked, { unknown, index, count }]) => ({
    name: valueName(decision, count === 1 ? unknown.answer : asked, ['unknowns', index, 'answer']),
    ask: unknown.ask,
    isKind: isKind(unknown.answer),
    whom: whomFor(unknown),
  }));
}

/** Answers about the building, by how their paths begin, and who is asked on the site sheet. */
const SITE: readonly (readonly [path: string, row: SiteRow])[] = [
  ['shop.bay', 'bay'],
  ['shop.ceiling', 'ceiling'],
  ['shop.doorway', 'doorway'],
  ['shop.doorSill', 'door-sill'],
  ['shop.floorRating', 'floor'],
  ['shop.power', 'power'],
  ['shop.air', 'air'],
  ['shop.lifting.hoist.hookHeight', 'hook'],
  ['shop.lifting', 'lifting'],
];

function whomFor({ answer, ask }: Unknown): string {
  if (ask === 'seller') return 'ask the seller, in writing';
  const site = SITE.find(([path]) => answer.startsWith(path));
  if (site === undefined && isKind(answer))
    return answer.startsWith('parts[') ? 'whoever makes the part knows' : 'you can settle that yourself';
  if (site === undefined) return 'you can measure it or look it up';
  const { who } = SITE_WORDS[site[1]];
  return who.startsWith('you') ? who : `ask ${who}`;
}

/** All of it in a sentence; nothing where nothing decides. */
export function worthFindingSentence(decision: Decision): readonly Inline[] {
  const found = worthFinding(decision);
  if (found.length === 0) return [];
  const [only] = found;
  if (found.length === 1 && only !== undefined)
    return say`Most worth finding out is ${only.name}: ${words(only.whom)}.`;
  const each = found.flatMap(({ name, whom }, index): readonly Inline[] => [
    words(`${index === 0 ? '' : '; '}${ORDINALS[index] ?? ''}, `),
    ...name,
    words(`: ${whom}`),
  ]);
  return say`Most worth finding out: ${each}.`;
}
