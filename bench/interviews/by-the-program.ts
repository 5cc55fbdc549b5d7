import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { askingOf } from '../../src/rules/asking/asking.ts';
import { isSameResult, runningOf } from '../../src/rules/standing.ts';
import { take } from '../../src/session/answer.ts';
import type { Given } from '../../src/session/kept.ts';
import { worthAsking } from '../../src/session/next.ts';
import { addPart, goOn } from '../../src/session/parts.ts';
import type { Session } from '../../src/session/session.ts';
import { newSession } from '../../src/session/start.ts';
import type { Item } from '../../src/session/survey.ts';
import { itemAt } from '../../src/session/walk.ts';
import { createWorld, type World } from '../../src/session/world.ts';
import { FEW, type Interview } from './interview.ts';

/** The conversation of the program itself, with a shop that answers what it is asked, until nothing more is asked. */
export function interviewedByTheProgram(truth: Answers, catalog: Catalog): Interview {
  const world = createWorld(catalog, nothingIsDecided, askingOf);
  let session = newSession(world, [], null, 'needed');
  let [asked, untilThree] = [0, null as number | null];
  for (;;) {
    if (untilThree === null && fewAreLeft(session, world)) untilThree = asked;
    const { at, kept } = session;
    if (at.at === 'parts') {
      [session] = kept.parts.length < truth.parts.length ? addPart(session) : goOn(session, world);
      continue;
    }
    const item = itemAt(at, kept, world);
    if (item === undefined) break;
    // units say nothing about the shop
    if (item.question.id !== 'units') asked += 1;
    [session] = take(session, item, saidBy(truth, item), world);
  }
  const { answers, items } = world.survey(session.kept);
  const standing = runningOf(answers, catalog);
  return {
    untilProven: asked,
    untilThree: untilThree ?? asked,
    skipped: items.filter(({ applies, given }) => applies && given === undefined).length,
    isRight: isSameResult(standing, runningOf(truth, catalog)),
    outcome: standing.outcome,
  };
}

/** While basic facts are asked nothing is reckoned, and every arrangement may still win. */
function fewAreLeft(session: Session, world: World): boolean {
  const asking = worthAsking(session, world);
  return asking !== null && asking !== 'later' && asking.left <= FEW;
}

function saidBy(truth: Answers, { question, subject }: Item): Given {
  const value = question.get(truth, subject ?? 0);
  return value === 'unknown' ? { from: 'not sure' } : { from: 'typed', value };
}

const nothingIsDecided = (): never => {
  throw new Error('an interview that is only asked decides nothing');
};
