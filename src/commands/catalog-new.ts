import wrapAnsi from 'wrap-ansi';
import { MACHINE_KINDS, ROTARY_CLASSES } from '../catalog/catalog.ts';
import { CATALOG_FORMAT } from '../catalog/catalog-schema.ts';
import { rowTemplate, type TemplateLine } from '../catalog/template/template.ts';
import { nearest } from '../documents/nearest.ts';
import { printable, quoted } from '../documents/printable.ts';
import { notWritten, writeFileText } from '../documents/write-file.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { filePath } from './file-path.ts';
import { type Lines, PROCESS_LINES } from './lines.ts';
import { UNUSABLE } from './outcome-codes.ts';

interface NewOptions {
  readonly class?: string;
  readonly kind?: string;
  readonly units?: LengthUnits;
  readonly out?: string;
  readonly overwrite?: boolean;
}

const WIDTH = 80;

/** What a template can be for. */
const ROWS = {
  rotary: { list: 'rotaries', option: 'class', other: 'kind', words: ROTARY_CLASSES },
  machine: { list: 'machines', option: 'kind', other: 'class', words: MACHINE_KINDS },
} as const;

/**
 * `fivesides catalog new`: a catalog file with one row to fill in, every key with what it means, printed or written. Exit code
 * 0; 2 where there is no such row or class, or the file is not written.
 */
export async function catalogNew(
  what: string,
  options: NewOptions,
  lines: Lines = PROCESS_LINES,
  cwd: string = process.cwd(),
): Promise<number> {
  const refuse = (words: string): number => {
    lines.remark(printable(`fivesides: ${words}.`));
    return UNUSABLE;
  };
  if (what !== 'rotary' && what !== 'machine')
    return refuse(`there is no template for ${quoted(what)}: expected rotary or machine`);
  const row = ROWS[what];
  if (options[row.other] !== undefined)
    return refuse(`--${row.other} is not for a ${what}: expected --${row.option}`);
  const of = options[row.option];
  const words: readonly string[] = row.words;
  if (of !== undefined && !words.includes(of)) {
    const near = nearest(of, words);
    const hint = near === undefined ? '' : ` (did you mean ${near}?)`;
    return refuse(`there is no ${row.option} ${quoted(of)}: expected ${words.join(', ')}${hint}`);
  }
  const units = options.units ?? 'mm';
  const text = `${[...heading(what, row.list, units), ...rowTemplate(row.list, of ?? null, units)]
    .flatMap(written)
    .join('\n')}\n`;
  if (options.out === undefined) {
    lines.result(text.trimEnd());
    return 0;
  }
  const path = filePath(options.out, cwd);
  const writing = writeFileText(path, text, { overwrite: options.overwrite === true, makeFolders: true });
  if (!writing.ok) {
    const remedy = writing.why === 'exists' ? ': say --overwrite, or --out with another file' : '';
    return refuse(`${options.out} is not written: ${notWritten(writing)}${remedy}`);
  }
  lines.result(printable(`Written: ${options.out}. Fill it in, then: fivesides catalog check its folder.`));
  return 0;
}

const heading = (what: string, list: string, units: LengthUnits): readonly TemplateLine[] => [
  {
    indent: 0,
    comments: [
      `A ${what} to fill in. What is not known stays unknown: it leaves checks open, and enters none as zero. A number may have its unit: 3 1/2 in, 95 kg. Left empty is what must be there.`,
    ],
    line: `format: ${CATALOG_FORMAT}`,
  },
  {
    indent: 0,
    comments: ['units of bare numbers: mm and kg, or inch and lb'],
    line: `units: ${units}`,
  },
  {
    indent: 0,
    comments: ['currency of the prices: three capital letters such as EUR'],
    line: 'currency:',
  },
  {
    indent: 0,
    comments: ['where the row comes from'],
    line: 'source: { maker: unknown, document: unknown, date: unknown }',
  },
  { indent: 0, comments: [], line: `${list}:` },
];

function written({ indent, comments, line }: TemplateLine): readonly string[] {
  const space = ' '.repeat(indent);
  const above = comments.flatMap((comment) => {
    const inner = /^ */.exec(comment)?.[0] ?? '';
    return wrapAnsi(comment.trim(), WIDTH - indent - 2 - inner.length)
      .split('\n')
      .map((each) => `${space}# ${inner}${each}`);
  });
  return [...above, ...(line === null ? [] : [space + line])];
}
