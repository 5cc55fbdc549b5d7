import { basename, dirname, join } from 'node:path';
import { notWritten, type Writing, writeFileText } from '../documents/write-file.ts';
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
  const folder = figuresFolder(basename(path));
  const text = markdown(folder);
  const writing = writeFileText(path, text, { overwrite });
  if (!writing.ok) return { writing, figures: null };
  // by their own names, which Markdown leaves as they are: that of the folder is written with escapes where it has brackets
  const shown = text.includes('.svg') ? files().filter(({ name }) => text.includes(`/${name}`)) : [];
  for (const { name, text: picture } of shown) {
    const each = writeFileText(join(dirname(path), folder, name), picture, {
      overwrite: true,
      makeFolders: true,
    });
    if (each.ok) continue;
    return {
      figures: null,
      writing: { ok: false, why: 'failed', words: `its figures cannot be written, ${notWritten(each)}` },
    };
  }
  return { writing, figures: shown.length === 0 ? null : folder };
}
