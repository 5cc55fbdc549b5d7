import { type Decision, type FeatureNeed, NEEDS } from '../../rules/decision.ts';
import { filled } from '../arguments.ts';
import { type Block, type Cell, heading, paragraph, table } from '../blocks/block.ts';
import { enumerate, number, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { valueName } from '../value-name.ts';
import { FEATURE_NEED_WORDS, FEATURE_REASON_WORDS, FEATURE_WORDS, THERE_WORDS } from '../wording/features.ts';

/** What to order with the recommendation, the needed first, each with its number, price and hours. */
export function features(decision: Decision): readonly Block[] {
  const rows = inOrderOfNeed(decision);
  if (rows.length === 0) return [];
  return [
    heading(2, say`Options to order`),
    paragraph(
      say`What is required is in the price already where the catalog names a price. An option pays for itself where the
        hours that it saves, at your rate and over your years, are worth its price or more.`,
    ),
    table(
      [
        [say`Option`, 'left'],
        [say`It is`, 'left'],
        [say`Why`, 'left'],
        [say`Price`, 'right'],
        [say`Saves a year`, 'right'],
      ],
      rows.map(({ row, path }) => line(decision, row, path)),
    ),
  ];
}

/** The same without the reasons: what to order at a glance. */
export function optionsInShort(decision: Decision): readonly Block[] {
  const rows = inOrderOfNeed(decision);
  if (rows.length === 0) return [];
  return [
    table(
      [
        [say`Option`, 'left'],
        [say`It is`, 'left'],
        [say`Price`, 'right'],
        [say`Saves a year`, 'right'],
      ],
      rows.map(({ row, path }) => line(decision, row, path).filter((_, column) => column !== WHY)),
    ),
  ];
}

const WHY = 2;

const inOrderOfNeed = ({ features: rows }: Decision) =>
  rows
    .map((row, index) => ({ row, path: ['features', index] }))
    .toSorted((a, b) => NEEDS.indexOf(a.row.need) - NEEDS.indexOf(b.row.need));

function line(decision: Decision, row: FeatureNeed, path: Path): readonly Cell[] {
  const need = words(FEATURE_NEED_WORDS[row.need]);
  const why = filled(decision, FEATURE_REASON_WORDS[row.why], row, path);
  return [
    [words(FEATURE_WORDS[row.feature])],
    row.sure || row.need === 'worth having' ? [need] : say`perhaps ${need}`,
    row.sure ? say`${why}.` : say`${why}${open(decision, row, path)}.`,
    row.there === 'offered'
      ? [number([...path, 'price'], 'money', { ifNull: 'ask the seller' })]
      : [words(THERE_WORDS[row.there])],
    row.savesHours === null ? [] : [number([...path, 'savesHours'], 'h')],
  ];
}

/** More unknowns than these in one line are not read. */
const MOST_OPEN = 3;

function open(decision: Decision, { openOn }: FeatureNeed, path: Path): Cell {
  const names = openOn
    .slice(0, MOST_OPEN)
    .map((answer, index) => valueName(decision, answer, [...path, 'openOn', index]));
  return names.length === 0 ? [] : say`; it depends on ${enumerate(names)}`;
}
