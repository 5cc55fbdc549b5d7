import { type Writing, writeFileText } from '../../documents/write-file.ts';
import { answersToFile } from '../../questions/write-answers.ts';
import type { Paper } from '../../report/exports/papers.ts';
import { variantsInFile } from '../../report/exports/variants.ts';
import type { Decision } from '../../rules/decision.ts';
import { savedOf } from '../../session/saved.ts';
import type { Effect, Event, Session, Written } from '../../session/session.ts';
import { variantsBeside } from '../../session/trial-screens.ts';
import { unitsOf, type World } from '../../session/world.ts';
import { filePath } from '../file-path.ts';
import { readTable } from '../read-table.ts';
import type { SessionKeeper } from '../session-keeper.ts';
import { writeReport } from '../write-report.ts';

type Wanted = Exclude<Effect, { kind: 'finish' }>;

/** Where files are, what is written to them, and whom to tell that the interview could not be saved, or not there. */
export interface Disk {
  /** the whole report, its pictures in a folder beside it */
  readonly markdown: (decision: Decision, figures: string) => string;
  readonly json: (decision: Decision) => string;
  /** one paper of the report: as text where the name of the file says so */
  readonly paper: (decision: Decision, paper: Paper, file: string) => string;
  readonly keeper: SessionKeeper;
  readonly cwd: string;
  readonly warn: (sentence: string) => void;
}

/** Does what the session asks for, at once; what became of it is an event. */
export function perform(effect: Wanted, session: Session, world: World, disk: Disk): readonly Event[] {
  if (effect.kind === 'save') {
    const told = disk.keeper.save(savedOf(session));
    if (told !== null) disk.warn(told);
    return [];
  }
  if (effect.kind === 'read') return [readTable(effect.file, disk.cwd)];
  const { what, file } = effect;
  const path = filePath(file, disk.cwd);
  const writing = write(path, effect, session, world, disk);
  if (writing.ok) return [{ type: 'written', what, file }];
  if (writing.why === 'exists') return [{ type: 'exists', what, file }];
  return [{ type: 'not-written', what, file, why: writing.words }];
}

function write(
  path: string,
  { what, file, overwrite }: Wanted & { readonly kind: 'write' },
  session: Session,
  world: World,
  disk: Disk,
): Writing {
  if (what !== 'report') return writeFileText(path, textOf(what, file, session, world, disk), { overwrite });
  return writeReport(path, decisionFor(what, session, world), disk.markdown, overwrite).writing;
}

function textOf(
  what: Exclude<Written, 'report'>,
  file: string,
  session: Session,
  world: World,
  disk: Disk,
): string {
  if (what === 'answers') {
    return answersToFile(world.survey(session.kept).answers, { units: unitsOf(session.kept) }).text;
  }
  if (what === 'variants') {
    const beside = variantsBeside(session, world);
    if (beside === null) throw new Error('variants were to be written, and one of them has no decision');
    return variantsInFile(beside, file);
  }
  const decision = decisionFor(what, session, world);
  return what === 'decision' ? disk.json(decision) : disk.paper(decision, what, file);
}

/** Only the whole of it says how far each answer may move. */
function decisionFor(what: Written, session: Session, world: World): Decision {
  const whole = what === 'report' || what === 'decision';
  const decision = whole ? world.decisionWithRanges(session.kept) : world.decision(session.kept);
  if (decision === null) throw new Error('a report was asked for before there is a decision');
  return decision;
}
