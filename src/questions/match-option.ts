import type { Option } from './question.ts';

export type Match =
  | { readonly ok: true; readonly value: string }
  | { readonly ok: false; readonly why: string };

/**
 * The option that a text means: its number (from 1), its word, or the beginning of one of its words where that
 * leaves no doubt. `inCell`: no options with numbers stand beside it. Example: 'he' of light, medium, heavy → heavy.
 */
export function matchOption(options: readonly Option[], typed: string, inCell = false): Match {
  const text = typed.trim().toLowerCase();
  if (/^\d+$/.test(text)) {
    const option = options[Number(text) - 1];
    return option === undefined ? no(`There is no ${text}`, options, inCell) : yes(option);
  }
  const exact = options.find((option) => wordsOf(option).includes(text));
  if (exact !== undefined) return yes(exact);
  const near =
    text === '' ? [] : options.filter((option) => beginnings(option).some((words) => words.startsWith(text)));
  const [first] = near;
  if (first === undefined) return no(`"${typed.trim()}" is none of them`, options, inCell);
  if (near.length === 1) return yes(first);
  return {
    ok: false,
    why: `"${typed.trim()}" can be ${near.map((option) => option.label).join(' or ')}: type more of the word, or its number.`,
  };
}

const wordsOf = (option: Option): readonly string[] => [
  option.value.toLowerCase(),
  option.label.toLowerCase(),
];

/** From every word of it on: 'hand' is enough for 'by hand'. */
const beginnings = (option: Option): readonly string[] =>
  wordsOf(option).flatMap((words) => words.split(/[\s-]/).map((_, index, all) => all.slice(index).join(' ')));

const yes = (option: Option): Match => ({ ok: true, value: option.value });

function no(what: string, options: readonly Option[], inCell: boolean): Match {
  // nothing is shown beside a cell that has numbers
  if (inCell)
    return { ok: false, why: `${what}: ${options.map(({ label }) => label).join(', ')}, or "not sure".` };
  const first = options.slice(0, 3).map((option) => option.label);
  const more = options.length > first.length ? ', ...' : '';
  return {
    ok: false,
    why: `${what}: type a number from 1 to ${options.length}, or a word such as ${first.join(', ')}${more}, or "not sure".`,
  };
}
