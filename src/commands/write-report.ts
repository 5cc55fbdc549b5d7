import { basename, dirname, join } from 'node:path';
import { isLink } from '../documents/there-at.ts';
import { LINK_THERE, type Writing, writeFileTexts } from '../documents/write-file.ts';
import { type FigureFile, figureFiles, figuresFolder } from '../report/index.ts';
import type { Decision } from '../rules/decision.ts';

export interface WrittenReport {
  /** of the figures, as it is called in the report; null: it has none */
  readonly figures: string | null;
  readonly writing: Writing;
}

/**
 * Writes a report in Markdown, and the pictures that it shows into a folder beside it: `report.md`, `report-figures`. A
 * report that is there is left as it is unless it may be replaced; its pictures go with it.
 */
export const writeReport = (
  path: string,
  decision: Decision,
  markdown: (decision: Decision, figures: string) => string,
  overwrite: boolean,
): WrittenReport =>
  writeWithFigures(
    path,
    (folder) => markdown(decision, folder),
    () => figureFiles(decision),
    overwrite,
  );

/** The same for any text in Markdown, and the pictures that it may show. */
export function writeWithFigures(
  path: string,
  markdown: (figures: string) => string,
  files: () => readonly FigureFile[],
  overwrite: boolean,
): WrittenReport {
  const made = withFigures(path, markdown, files, overwrite);
  if (made.refused !== null) {
    return { figures: null, writing: { ok: false, why: 'failed', words: made.refused } };
  }
  const writing = writeFileTexts(made.files);
  return { writing, figures: writing.ok ? made.figures : null };
}

interface FilesOfPaper {
  /** in the order in which they are written */
  readonly files: Parameters<typeof writeFileTexts>[0];
  readonly figures: string | null;
  /** why it must not be written; null: nothing stands against it */
  readonly refused: string | null;
}

/** What there is to write of a text in Markdown and the pictures that it shows. */
export function withFigures(
  path: string,
  markdown: (figures: string) => string,
  files: () => readonly FigureFile[],
  overwrite: boolean,
): FilesOfPaper {
  const folder = figuresFolder(basename(path));
  const text = markdown(folder);
  // by their own names, which Markdown leaves as they are: that of the folder is written with escapes where it has brackets
  const shown = text.includes('.svg') ? files().filter(({ name }) => text.includes(`/${name}`)) : [];
  const beside = join(dirname(path), folder);
  const refused =
    shown.length > 0 && isLink(beside) ? `where the folder of its figures would be, ${LINK_THERE}` : null;
  const pictures = shown.map(({ name, text: picture }) => ({
    path: join(beside, name),
    text: picture,
    overwrite: true,
    makeFolders: true,
  }));
  // the report comes last: where one is there, so are its figures
  return {
    files: [...pictures, { path, text, overwrite }],
    figures: shown.length > 0 ? folder : null,
    refused,
  };
}
