import { type FormNotes, type JsonForm, jsonSchemaOf, NOTES } from '../../documents/fields/json-form.ts';
import { isMap } from '../../documents/fields/strict-map.ts';
import type { LengthUnits } from '../../quantities/kinds.ts';
import type { List } from '../catalog.ts';
import { machineField } from '../machine-schema.ts';
import { rotaryField } from '../rotary-schema.ts';
import { isRefused, type Variant, variantsOf } from './variants.ts';

/** A line of a template with what is said above it. */
export interface TemplateLine {
  readonly indent: number;
  /** paragraphs of a comment; none: nothing is said */
  readonly comments: readonly string[];
  /** null: only comments */
  readonly line: string | null;
}

interface Kind {
  readonly list: List;
  /** the key that says which class or kind a row is */
  readonly key: 'class' | 'kind';
  /** null: nobody said which */
  readonly of: string | null;
  readonly variants: readonly Variant[];
}

const INDENT = 2;

/**
 * A row of a catalog with nothing filled in: every key that such a row can have, with what it means, its unit, and the checks
 * that stay open without it, all of it read off the schema. What may be left out is written as not known; what must be there
 * is left empty. `of`: the class of a rotary, the kind of a machine; null: keys of every one.
 */
export function rowTemplate(list: List, of: string | null, units: LengthUnits): readonly TemplateLine[] {
  const kind: Kind = {
    list,
    key: list === 'rotaries' ? 'class' : 'kind',
    of,
    variants: variantsOf(list, of),
  };
  const form = jsonSchemaOf(list === 'rotaries' ? rotaryField(units) : machineField(units), true);
  const lines = mapLines(form, [], kind, 2 * INDENT);
  // the first key of the row carries the dash of the list
  return lines.map((each, at) =>
    at === 0 && each.line !== null ? { ...each, indent: INDENT, line: `- ${each.line}` } : each,
  );
}

function mapLines(
  form: JsonForm,
  path: readonly string[],
  kind: Kind,
  indent: number,
): readonly TemplateLine[] {
  const required: readonly unknown[] = Array.isArray(form.required) ? form.required : [];
  return propertiesOf(form).flatMap(([key, inner]) => {
    const own = [...path, key];
    if (path.length === 0 && required.includes(key)) return [requiredLine(key, inner, kind, indent)];
    const where = kind.variants.filter((each) => belongs(each, own, inner));
    if (where.length === 0) return [];
    const comments = commentsOf(inner, own, kind, where);
    if (hasKeys(inner)) {
      // what is said of the map holds for its keys
      const lines = mapLines(inner, own, { ...kind, variants: where }, indent + INDENT);
      return lines.length === 0 ? [] : [{ indent, comments, line: `${key}:` }, ...lines];
    }
    const blank = blankOf(inner);
    const line = { indent, comments, line: blank === '' ? `${key}:` : `${key}: ${blank}` };
    return [line, ...exampleLines(key, inner, own, where, indent)];
  });
}

function requiredLine(key: string, form: JsonForm, { key: its, of }: Kind, indent: number): TemplateLine {
  const value = key === its && of !== null ? ` ${of}` : '';
  const must = value === '' ? 'required: ' : '';
  return { indent, comments: [`${must}${meansOf(form)}${choices(form)}`], line: `${key}:${value}` };
}

/** Whether such a row can have the key: it can lack it, or plainly has none of it while nobody says otherwise. */
function belongs(variant: Variant, path: readonly string[], form: JsonForm): boolean {
  if (isRefused(variant, path)) return false;
  const text = path.join('.');
  const lacks = [...variant.lacks.keys()].some(
    (each) => each === text || each.startsWith(`${text}.`) || each.startsWith(`${text}[`),
  );
  return lacks || (!hasKeys(form) && blankOf(form) !== 'unknown');
}

function commentsOf(
  form: JsonForm,
  path: readonly string[],
  kind: Kind,
  where: readonly Variant[],
): readonly string[] {
  const about = [`${wordsOf(form)}${choices(form)}`, ...onlyFor(kind, where)];
  const open = hasKeys(form) ? [] : checksOf(path, where);
  return [...about, ...(open.length === 0 ? [] : [`open without it: ${open.join(', ')}`])];
}

function checksOf(path: readonly string[], where: readonly Variant[]): readonly string[] {
  const text = path.join('.');
  const found = where.flatMap(({ lacks }) =>
    [...lacks].flatMap(([each, checks]) => (each === text || each.startsWith(`${text}[`) ? checks : [])),
  );
  return [...new Set(found)];
}

/** For which classes, kinds or spindles a key is, where it is not for all. */
function onlyFor({ variants, key }: Kind, where: readonly Variant[]): readonly string[] {
  const words = ([key, 'spindle'] as const).flatMap((facet) => {
    const all = new Set(variants.map(({ row }) => String(row[facet])));
    const some = new Set(where.map(({ row }) => String(row[facet])));
    if (some.size === all.size) return [];
    const named = [...some].filter((each) => each !== 'unknown');
    return named.length === 0 ? [] : [`${facet} ${named.join(', ')}`];
  });
  return words.length === 0 ? [] : [`only for ${words.join(', ')}`];
}

/** How a value of several parts is written, as a comment behind its key. */
function exampleLines(
  key: string,
  form: JsonForm,
  path: readonly string[],
  where: readonly Variant[],
  indent: number,
): readonly TemplateLine[] {
  const branches = [form, ...branchesOf(form)];
  const map = branches.find(hasKeys);
  const list = branches.map(({ items }) => items).find((items) => isMap(items) && hasKeys(items));
  const inner = map ?? (isMap(list) ? list : undefined);
  if (inner === undefined) return [];
  const entries = propertiesOf(inner).filter(([each]) =>
    where.some((variant) => !isRefused(variant, [...path, each])),
  );
  const mark = map === undefined ? '- ' : '';
  const lines = entries.map(([each, its], at) => {
    const told = hasKeys(its)
      ? `{ ${propertiesOf(its).map(exampleOf).join(', ')} }`
      : `# ${wordsOf(its)}${choices(its)}`;
    return `${at === 0 || mark === '' ? mark : '  '}${each}: ${told}`;
  });
  return [{ indent, comments: ['written as:', `${key}:`, ...lines.map((each) => `  ${each}`)], line: null }];
}

const exampleOf = ([key, form]: readonly [string, JsonForm]): string =>
  `${key}: ${blankOf(form) || 'unknown'}`;

/** What a value is, how it is written and in which unit, and its limits. */
function wordsOf(form: JsonForm): string {
  const notes = notesOf(form);
  if (notes === null) return meansOf(form);
  const { unit, names, bounds } = notes;
  const isRange = [form, ...branchesOf(form)].some(
    ({ type, minItems }) => type === 'array' && minItems === 2,
  );
  const list = names === undefined ? (isRange ? ' [from, to]' : '') : ` [${names.join(', ')}]`;
  const inUnit = unit === '' ? '' : `, in ${UNIT_WORDS[unit] ?? unit}`;
  // that a size is more than nothing goes without saying
  const telling = bounds
    .split(', ')
    .filter((each) => each !== '' && !/^(?:more than|at least) 0(?!\.)/.test(each));
  return `${meansOf(form)}${list}${inUnit}${telling.map((each) => `, ${each}`).join('')}`;
}

const UNIT_WORDS: Readonly<Record<string, string>> = { in: 'inches', money: 'the currency of the file' };

/** What stands for nothing known; where there is no such word, what says that there is none. */
function blankOf(form: JsonForm): string {
  const all = [form, ...branchesOf(form)];
  const words = all.flatMap((each) => (Array.isArray(each.enum) ? each.enum : [each.const]));
  if (words.includes('unknown')) return 'unknown';
  if (Array.isArray(form.type) && form.type.includes('number')) return 'unknown';
  if (words.includes('none')) return 'none';
  return form.type === 'array' ? '[]' : '';
}

function choices(form: JsonForm): string {
  const words: readonly unknown[] = Array.isArray(form.enum) ? form.enum : [];
  const named = words.filter((each) => each !== 'unknown');
  return named.length === 0 ? '' : `: ${named.join(', ')}`;
}

function meansOf(form: JsonForm): string {
  const { items, description } = form;
  return notesOf(form)?.means ?? String(description ?? (isMap(items) ? items.description : undefined) ?? '');
}

function notesOf(form: JsonForm): FormNotes | null {
  const notes = form[NOTES];
  return isMap(notes) ? (notes as unknown as FormNotes) : null;
}

const branchesOf = ({ anyOf }: JsonForm): readonly JsonForm[] =>
  Array.isArray(anyOf) ? anyOf.filter(isMap) : [];
const hasKeys = (form: JsonForm): boolean => isMap(form.properties);
const propertiesOf = (form: JsonForm): readonly (readonly [string, JsonForm])[] =>
  isMap(form.properties)
    ? Object.entries(form.properties).flatMap(([key, inner]) => (isMap(inner) ? [[key, inner] as const] : []))
    : [];
