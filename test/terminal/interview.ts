import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Catalog } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Kept } from '../../src/session/kept.ts';
import { type QuestionScreen, screenOf } from '../../src/session/screen.ts';
import { newSession } from '../../src/session/start.ts';
import { step } from '../../src/session/step.ts';
import { createWorld, type World } from '../../src/session/world.ts';
import { folderWith } from '../temporary-folder.ts';
import { DEMO, KEY, type StartOptions, start, type Terminal } from './harness.ts';

/** A few rows of the demo catalog: so few arrangements are soon judged. */
export const smallCatalog = (): string =>
  folderWith(
    Object.fromEntries(
      ['machines-small-mills.yaml', 'rotaries-trunnions.yaml'].map((file) => [
        file,
        readFileSync(join(DEMO, file), 'utf8'),
      ]),
    ),
  );

/** A catalog, and nobody who decides: for as long as no part has a size. */
export const undecided = (folder: string): World =>
  createWorld(catalogIn(folder), () => {
    throw new Error('nothing is decided here');
  });

/** A catalog, and the rules. */
export const decided = (folder: string): World => createWorld(catalogIn(folder), decide);

function catalogIn(folder: string): Catalog {
  const catalog = readCatalog([folder]);
  if (!catalog.ok) throw new Error(`${folder} cannot be read`);
  return catalog.value;
}

/** What is typed line by line as the answer, by the id of the question; a choice is a number. Others are left open. */
export type Replies = Readonly<Record<string, string>>;

export const HINGE: Replies = {
  units: '1',
  'own-mill': '1',
  name: 'Hinge',
  shape: '1',
  size: '90 x 60 x 55',
  material: '7',
  approaches: '1, 2',
};

/** A question as it comes, and its answer: as keys, and as a line. */
export interface Turn {
  readonly id: string;
  /** what its screen shows and no other */
  readonly title: string | RegExp;
  readonly keys: string;
  readonly line: string;
}

/** The place of a question as its title row says it. */
export const question = (number: number): RegExp => new RegExp(`question ${number}(?!\\d)`);

/** Every question up to the review, answered; between them, to go on from the list of parts. */
export function turnsOf(replies: Replies, world: World): readonly Turn[] {
  const turns: Turn[] = [];
  let session = newSession(world, [], null, 'all');
  for (;;) {
    const screen = screenOf(session, world);
    if (screen.kind === 'review') return turns;
    if (screen.kind !== 'question') {
      turns.push({ id: 'parts', title: 'Parts', keys: KEY.enter, line: 'go on' });
      [session] = step(session, { type: 'accept' }, world);
      continue;
    }
    const reply = replies[screen.id];
    const line = reply ?? 'not sure';
    const keys = reply === undefined ? KEY.ctrlN : keysOf(screen.input, reply);
    turns.push({ id: screen.id, title: question(screen.progress.number), keys, line });
    [session] = step(session, { type: 'reply', text: line }, world);
    if (session.note?.kind === 'error') throw new Error(`${screen.id}: ${session.note.why}`);
  }
}

/** The turns up to a question, not with it. */
export const until = (turns: readonly Turn[], id: string): readonly Turn[] =>
  turns.slice(
    0,
    turns.findIndex((turn) => turn.id === id),
  );

function keysOf({ kind }: QuestionScreen['input'], reply: string): string {
  if (kind === 'quantity' || kind === 'text') return `${reply}\r`;
  if (kind === 'yes-no') return reply === 'yes' ? '1\r' : '2\r';
  return kind === 'choice' ? `${reply}\r` : `${reply.split(', ').join(' ')} \r`;
}

/** From how to begin to the first question. */
export async function begun(options: StartOptions = {}): Promise<Terminal> {
  const terminal = start(options);
  await terminal.waitFor('Begin a new interview');
  terminal.send(KEY.enter);
  await terminal.waitFor(question(1));
  return terminal;
}

/** Answers question after question, each when it is asked. */
export async function answered(terminal: Terminal, turns: readonly Turn[]): Promise<void> {
  for (const { title, keys } of turns) {
    await terminal.waitFor(title);
    terminal.send(keys);
  }
}

export interface SavedFile {
  readonly format: string;
  readonly answers: Kept;
}

/** The interview as it is kept in the file at this moment. */
export const savedBy = ({ cwd }: Pick<Terminal, 'cwd'>): SavedFile =>
  JSON.parse(readFileSync(join(cwd, 'kept.json'), 'utf8'));

/** Until nothing is worked out any more. */
export const settled = (terminal: Terminal): Promise<string> =>
  terminal.waitFor((text) => !/being\s+worked\s+out/i.test(text));
