import type { Decision } from '../../rules/decision.ts';
import { displayText } from '../display-text.ts';
import { VERDICT_WORDS } from '../wording/verdicts.ts';
import type { Inline } from './inline.ts';
import { lookUp, placeText } from './path.ts';
import { numberText } from './value-text.ts';

export interface TextOptions {
  /** signs and symbols in plain ASCII */
  readonly ascii: boolean;
  /** numbers stay beside their units where lines are wrapped */
  readonly unbroken?: boolean;
}

/** A space at which no line breaks. */
export const NO_BREAK = '\u00a0';

/** A piece of a sentence as text. Nothing in it can steer a terminal. */
export function inlineText(inline: Inline, decision: Decision, options: TextOptions): string {
  switch (inline.kind) {
    case 'words':
    case 'standard':
      return inline.text;
    case 'number':
      return options.unbroken === true
        ? numberText(inline, decision).replaceAll(' ', NO_BREAK)
        : numberText(inline, decision);
    case 'data':
      return dataText(lookUp(decision, inline.path));
    case 'name':
      lookUp(decision, inline.path);
      return displayText(String(inline.path.at(-1)));
    case 'verdict': {
      const { sign, ascii, word } = VERDICT_WORDS[inline.verdict];
      return `${options.ascii ? ascii : sign} ${word}`;
    }
    case 'strong':
      return textOf(inline.children, decision, options);
  }
  throw new TypeError(`no text for ${placeText(['inline', (inline satisfies never as Inline).kind])}`);
}

/** A whole sentence as text. */
export const textOf = (sentence: readonly Inline[], decision: Decision, options: TextOptions): string =>
  sentence.map((each) => inlineText(each, decision, options)).join('');

/** Text that came from outside. A blank name is shown as such, so that it does not read as a mistake. */
function dataText(value: unknown): string {
  const text = displayText(Array.isArray(value) ? value.join(', ') : String(value));
  return text.trim() === '' ? '(blank)' : text;
}
