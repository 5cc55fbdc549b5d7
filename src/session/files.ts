import { NOTHING_KEPT } from './kept.ts';
import { comeBack } from './move.ts';
import { type Effect, type Place, refused, type Session, type Step, type Written } from './session.ts';
import { goOnFrom } from './start.ts';
import { REVIEW, TRIAL } from './walk.ts';
import type { World } from './world.ts';

/** Where files go unless another name is typed: in the current folder. */
export const USUAL_FILE: Readonly<Record<Written, string>> = {
  answers: 'fivesides.answers.yaml',
  report: 'fivesides-report.md',
  decision: 'fivesides-decision.json',
  'half-page': 'fivesides-half-page.md',
  'site-sheet': 'fivesides-site-sheet.md',
  'quote-sheets': 'fivesides-quote-sheets.md',
  variants: 'fivesides-variants.md',
};

const FINISH: readonly Effect[] = [{ kind: 'finish' }];

/** At the end: a file name or Enter writes the report, no leaves it; either way the interview is finished. */
export function replyAtResult(session: Session, text: string): Step {
  // while something is tried, this is not the end
  if (session.trial !== null && /^(|n|no)$/i.test(text.trim())) return [comeBack(session, TRIAL), []];
  if (/^(n|no)$/i.test(text.trim())) return [{ ...session, at: { at: 'done' } }, FINISH];
  return replyAtFile(session, 'report', /^(y|yes)$/i.test(text.trim()) ? '' : text);
}

/** A name that does not end as such files do is more likely a word that was meant otherwise. */
const MARKDOWN = { ending: /\.(md|markdown)$/i, words: '.md' };
const MARKDOWN_OR_TEXT = { ending: /\.(md|markdown|txt)$/i, words: '.md, or .txt for plain text' };
const ENDINGS: Readonly<Record<Written, { readonly ending: RegExp; readonly words: string }>> = {
  answers: { ending: /\.ya?ml$/i, words: '.yaml' },
  report: MARKDOWN,
  decision: { ending: /\.json$/i, words: '.json' },
  'half-page': MARKDOWN_OR_TEXT,
  'site-sheet': MARKDOWN_OR_TEXT,
  'quote-sheets': MARKDOWN_OR_TEXT,
  variants: MARKDOWN_OR_TEXT,
};

export function replyAtFile(session: Session, what: Written, text: string): Step {
  const typed = text.trim().replace(/^"(.+)"$/, '$1');
  const file = typed === '' ? USUAL_FILE[what] : typed;
  const { ending, words } = ENDINGS[what];
  if (!ending.test(file)) {
    return refused(session, text, `Type a file name that ends in ${words}, or "back".`);
  }
  return [session, [{ kind: 'write', what, file, overwrite: false }]];
}

/** yes replaces the file, no asks for another name. */
export function replyAtOverwrite(
  session: Session,
  at: Place & { readonly at: 'overwrite' },
  text: string,
): Step {
  const answer = text.trim().toLowerCase();
  if (/^(y|yes|1)$/.test(answer)) {
    return [comeBack(session, REVIEW), [{ kind: 'write', what: at.what, file: at.file, overwrite: true }]];
  }
  if (/^(n|no|2)$/.test(answer)) {
    const back = comeBack(session, REVIEW);
    const asks = back.at.at === 'file' || back.at.at === 'result';
    return [asks ? back : { ...back, note: { kind: 'said', words: 'Nothing is written.' } }, []];
  }
  return refused(session, text, `Type yes to replace ${at.file}, or no to keep it.`);
}

const WRITTEN_WORDS: Readonly<Record<Written, string>> = {
  answers: 'answers are',
  report: 'report is',
  decision: 'decision is',
  'half-page': 'half page is',
  'site-sheet': 'site sheet is',
  'quote-sheets': 'quote sheets are',
  variants: 'variants are',
};

/** A file is written: on from where its name was asked. At the result that is the end. */
export function written(session: Session, what: Written, file: string): Step {
  const note = {
    kind: 'said',
    words: `The ${WRITTEN_WORDS[what]} in ${file}.`,
  } as const;
  if (session.at.at === 'result' && what === 'report' && session.trial === null)
    return [{ ...session, note, at: { at: 'done' } }, FINISH];
  const next = session.at.at === 'file' ? comeBack(session, REVIEW) : session;
  return [{ ...next, note }, []];
}

/** A saved interview was found: resume goes on with it, new forgets it. */
export function replyAtResume(session: Session, text: string, world: World): Step {
  const answer = text.trim().toLowerCase();
  if (/^(1|r|resume|y|yes)$/.test(answer)) return [goOnFrom(session, REVIEW, world), []];
  if (/^(2|n|new|no)$/.test(answer)) {
    const blank = { ...session, kept: NOTHING_KEPT, detours: [], trail: [], trial: null, variants: [] };
    return [goOnFrom(blank, REVIEW, world), []];
  }
  return refused(session, text, 'Type resume to go on with the saved interview, or new to begin another.');
}
