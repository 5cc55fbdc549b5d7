import type { Verdict } from '../../rules/decision.ts';

/** What a piece of text is, not how it looks: whoever paints it gives it a color, or none. */
export type Tone = 'plain' | 'strong' | 'quiet' | 'marked' | 'error' | 'title' | Verdict;

export interface Span {
  readonly text: string;
  readonly tone: Tone;
}

/** One row of the screen. Rows of a list are drawn by the list, with what is highlighted marked. */
export interface Row {
  readonly spans: readonly Span[];
  readonly item?: { readonly marked: boolean };
}

/** Example: row('Size', 'strong') */
export const row = (text: string, tone: Tone = 'plain'): Row => ({ spans: [{ text, tone }] });

export const EMPTY: Row = row('');

/** The text of a row without its looks. */
export const textOfRow = ({ spans }: Row): string => spans.map(({ text }) => text).join('');
