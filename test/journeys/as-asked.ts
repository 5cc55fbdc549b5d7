import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { describeValue } from '../../src/questions/describe-value.ts';
import { askingOf } from '../../src/rules/asking/asking.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { givenAt, type Kept } from '../../src/session/kept.ts';
import { opened } from '../../src/session/opened.ts';
import type { Session } from '../../src/session/session.ts';
import { newSession } from '../../src/session/start.ts';
import { itemAt } from '../../src/session/walk.ts';
import { createWorld, type World } from '../../src/session/world.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';

/** A shop that knows its answers, and says one only when it is asked for it. */
export interface AskedShop {
  readonly world: World;
  /** all that it could say */
  readonly knows: Kept;
  /** what it says where the interview stands; null where nothing is asked any more */
  readonly says: (session: Session) => string | null;
  /** what is recommended on these answers */
  readonly recommended: (kept: Kept) => string | null;
  /** questions that all its answers are about */
  readonly questions: number;
}

/** A shop of the demo before its catalog, with the first so many of its parts. */
export function askedShop(shop: string, parts: number): AskedShop {
  const catalog = demoCatalog();
  const world = createWorld(catalog, once(decide), once(askingOf));
  const { shop: ofShop, parts: ofParts } = opened(
    demoAnswers(shop),
    newSession(world, [], null, 'all'),
    world,
  ).kept;
  // without the file: only what is answered counts
  const knows: Kept = { shop: ofShop, parts: ofParts.slice(0, parts) };
  return {
    world,
    knows,
    says: (session) => said(session, knows, world),
    recommended: (kept) => decided(kept, world).recommended,
    questions: world.survey(knows).items.filter(({ applies }) => applies).length,
  };
}

/** What is worked out for the same answers again is remembered. */
function once<Given extends readonly unknown[], Result>(
  work: (answers: Answers, catalog: Catalog, ...given: Given) => Result,
): (answers: Answers, catalog: Catalog, ...given: Given) => Result {
  const done = new Map<string, Result>();
  return (answers, catalog, ...given) => {
    const key = JSON.stringify([answers, given]);
    const result = done.get(key) ?? work(answers, catalog, ...given);
    done.set(key, result);
    return result;
  };
}

function decided(kept: Kept, world: World): Decision {
  const decision = world.liveDecision(kept);
  if (decision === null) throw new Error('nothing is decided');
  return decision;
}

function said(session: Session, knows: Kept, world: World): string | null {
  const { at, kept } = session;
  if (at.at === 'parts') return kept.parts.length < knows.parts.length ? 'add' : 'go on';
  if (at.at !== 'question') return null;
  const given = givenAt(knows, at.subject, at.id);
  const field = itemAt(at, kept, world)?.question.field;
  if (given === undefined || given.from === 'not sure' || field === undefined) return 'not sure';
  return describeValue(field, given.value, { ...world.setting, currency: '', units: 'mm' });
}
