import type { AnswerBeside, Beside } from '../rules/beside.ts';
import { answersBeside } from './answers-beside.ts';
import type { Session } from './session.ts';
import { presentOf } from './trial.ts';
import { PRESENT } from './variants.ts';
import type { World } from './world.ts';

/** Where other answers are tried, named, and held against each other. What they lead to is asked for apart: it takes deciding. */
export type TrialScreen =
  /** `of`: the variant that is looked at; `changes`: what is answered otherwise, now the second of its words */
  | { readonly kind: 'trial'; readonly of: string | null; readonly changes: readonly AnswerBeside[] }
  | { readonly kind: 'naming'; readonly of: string | null }
  | { readonly kind: 'variants'; readonly names: readonly string[] };

export function trialScreen(kind: TrialScreen['kind'], session: Session, world: World): TrialScreen {
  const of = session.trial?.of ?? null;
  if (kind === 'naming') return { kind, of };
  if (kind === 'variants') return { kind, names: session.variants.map(({ name }) => name) };
  return { kind, of, changes: answersBeside([presentOf(session), session.kept], world) };
}

/** Said where one of those leads to no result. */
export const NO_RESULT = 'That leads to no result: at least one part needs a shape and a size.';

const TRIED = 'What is tried';

/** The answers of the interview, then what is tried; null where one of them leads to no result. Takes deciding. */
export function triedBeside(session: Session, world: World): Beside | null {
  const name = session.trial?.of ?? TRIED;
  return beside(
    [
      { name: PRESENT, kept: presentOf(session) },
      { name, kept: session.kept },
    ],
    world,
  );
}

/** The answers of the interview, then each variant; null where one of them leads to no result. Takes deciding. */
export const variantsBeside = (session: Session, world: World): Beside | null =>
  beside([{ name: PRESENT, kept: presentOf(session) }, ...session.variants], world);

function beside(all: Session['variants'], world: World): Beside | null {
  const columns = all.map(({ name, kept }) => ({ name, decision: world.everyArrangement(kept) }));
  const decided = columns.filter((column): column is Beside['columns'][number] => column.decision !== null);
  if (decided.length < all.length) return null;
  const answers = answersBeside(
    all.map(({ kept }) => kept),
    world,
  );
  return { columns: decided, answers };
}
