import { basename, extname, join, parse } from 'node:path';
import type { Catalog } from '../catalog/catalog.ts';
import { notWritten, writeFileTexts } from '../documents/write-file.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import type { Lesson } from '../teaching/lessons/lesson.ts';
import type { ReadyLesson } from '../teaching/lessons/run-lesson.ts';
import { solutionsMarkdown, worksheetFigures, worksheetMarkdown } from '../teaching/worksheets/exports.ts';
import { type Sheet, sheetOf } from '../teaching/worksheets/sheet.ts';
import { variantOf } from '../teaching/worksheets/variant.ts';
import { filePath } from './file-path.ts';
import { type Guard, inTheWay } from './in-the-way.ts';
import { withFigures } from './write-report.ts';

/** What is asked for on the command line. */
export interface SheetsAsked {
  readonly worksheet?: string;
  readonly solutions?: string;
  readonly units: LengthUnits;
  /** so many sheets, each with numbers of its own; left out: one */
  readonly variants?: number;
  /** of the first of them; left out: the lesson as it is written, or from 1 on where several are asked for */
  readonly seed?: number;
}

export type SheetsWritten =
  | { readonly ok: true; readonly says: readonly string[] }
  | { readonly ok: false; readonly why: readonly string[] };

/** A lesson for a seed, ready; null: as it is written. Or why there is none. */
export type LessonFor = (
  seed: number | null,
) => { readonly ok: true; readonly ready: ReadyLesson } | { readonly ok: false; readonly why: string };

/** More sheets are not written at once. */
const MOST_VARIANTS = 100;
const LARGEST_SEED = 1_000_000_000;

interface TypedNumbers {
  readonly seed?: string;
  readonly variants?: string;
}

/** What was typed for them, as whole numbers; or what is accepted. */
export function sheetNumbers({
  seed,
  variants,
}: TypedNumbers):
  | { readonly ok: true; readonly value: Pick<SheetsAsked, 'seed' | 'variants'> }
  | { readonly ok: false; readonly why: string } {
  const from = wholeNumber(seed, 0, LARGEST_SEED);
  if (from === null) return refused('--seed', 0, LARGEST_SEED);
  const many = wholeNumber(variants, 1, MOST_VARIANTS);
  if (many === null) return refused('--variants', 1, MOST_VARIANTS);
  return {
    ok: true,
    value: {
      ...(from === undefined ? {} : { seed: from }),
      ...(many === undefined ? {} : { variants: many }),
    },
  };
}

const refused = (option: string, least: number, most: number) => ({
  ok: false as const,
  why: `fivesides: ${option} takes a whole number from ${least} to ${most}.`,
});

/** Undefined: nothing was typed. Null: no whole number in between. */
function wholeNumber(typed: string | undefined, least: number, most: number): number | null | undefined {
  if (typed === undefined) return undefined;
  const value = Number(typed);
  return /^\d+$/.test(typed) && value >= least && value <= most ? value : null;
}

/** A lesson as it is written, or with the numbers of a seed. */
export const variantsOf =
  (ready: ReadyLesson, lesson: Lesson, catalog: Catalog): LessonFor =>
  (seed) => {
    const made = seed === null ? ready : variantOf(lesson, catalog, seed);
    return made === null
      ? { ok: false, why: `with the numbers of seed ${seed} a step cannot be worked out; take another seed.` }
      : { ok: true, ready: made };
  };

/** The seeds of the sheets. Example: 3 variants from 7 on → 7, 8, 9. */
export function seedsOf({ variants, seed }: SheetsAsked): readonly (number | null)[] {
  if (variants === undefined) return [seed ?? null];
  return Array.from({ length: variants }, (_, index) => (seed ?? 1) + index);
}

/** Example: ('class/reach.md', 7) → 'class/reach-7.md'. */
export function numbered(file: string, seed: number): string {
  const { dir, name, ext } = parse(file);
  return join(dir, `${name}-${seed}${ext}`);
}

/** More files are not named in a line. */
const MOST_NAMED = 3;

interface ToWrite {
  /** as the user calls it */
  readonly file: string;
  readonly seed: number | null;
  readonly what: 'worksheet' | 'solutions';
}

/**
 * Writes worksheets and their keys, or nothing where one of them is in the way or cannot be made. Of several each has its seed in
 * its name, and the key the same one.
 */
export function writeSheets(
  name: string,
  lessonFor: LessonFor,
  asked: SheetsAsked,
  guard: Guard,
  cwd: string,
): SheetsWritten {
  const all = toWrite(asked);
  const paths = all.map(({ file }) => filePath(file, cwd));
  if (new Set(paths).size < paths.length)
    return { ok: false, why: ['fivesides: worksheet and solutions are the same file; name two.'] };
  const stopped = all.flatMap(({ file }) => {
    const why = inTheWay(filePath(file, cwd), guard);
    return why === null ? [] : [`fivesides: ${file}: ${why}. Nothing is written.`];
  });
  if (stopped.length > 0) return { ok: false, why: stopped };
  const sheets = new Map<number | null, Sheet>();
  for (const seed of seedsOf(asked)) {
    const made = lessonFor(seed);
    if (!made.ok) return { ok: false, why: [`fivesides: ${made.why} Nothing is written.`] };
    sheets.set(seed, sheetOf(made.ready, { name: sheetName(name), seed, units: asked.units }));
  }
  return written(all, sheets, guard, cwd);
}

function toWrite(asked: SheetsAsked): readonly ToWrite[] {
  const several = asked.variants !== undefined;
  return seedsOf(asked).flatMap((seed) =>
    (['worksheet', 'solutions'] as const).flatMap((what): readonly ToWrite[] => {
      const file = asked[what];
      if (file === undefined) return [];
      return [{ file: several && seed !== null ? numbered(file, seed) : file, seed, what }];
    }),
  );
}

function written(
  all: readonly ToWrite[],
  sheets: ReadonlyMap<number | null, Sheet>,
  { overwrite }: Guard,
  cwd: string,
): SheetsWritten {
  const papers = all.flatMap(({ file, seed, what }) => {
    const sheet = sheets.get(seed);
    if (sheet === undefined) return [];
    const path = filePath(file, cwd);
    const paper =
      what === 'worksheet'
        ? withFigures(
            path,
            (folder) => worksheetMarkdown(sheet, folder),
            () => worksheetFigures(sheet),
            overwrite,
          )
        : withFigures(
            path,
            () => solutionsMarkdown(sheet),
            () => [],
            overwrite,
          );
    return [{ file, ...paper }];
  });
  const refused = papers.flatMap(({ file, refused: why }) =>
    why === null ? [] : [`fivesides: ${file} was not written: ${why}. Nothing is written.`],
  );
  if (refused.length > 0) return { ok: false, why: refused };
  const writing = writeFileTexts(papers.flatMap(({ files }) => files));
  if (!writing.ok) {
    const names = papers.map(({ file }) => file).slice(0, MOST_NAMED);
    return {
      ok: false,
      why: [`fivesides: ${names.join(', ')}: ${notWritten(writing)}. Nothing is written.`],
    };
  }
  return {
    ok: true,
    says: papers.map(({ file, figures }) => {
      const beside = figures === null ? '' : `, its figures to ${figures} beside it`;
      return `fivesides: written to ${file}${beside}.`;
    }),
  };
}

/** A lesson of one's own goes by its file, without where that is. Example: 'own/reach.yaml' → 'reach'. */
const sheetName = (name: string): string => basename(name, extname(name));
