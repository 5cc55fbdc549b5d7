/** Keys that are no text. */
export type NamedKey =
  | 'up'
  | 'down'
  | 'left'
  | 'right'
  | 'enter'
  | 'escape'
  | 'tab'
  | 'shift-tab'
  | 'backspace'
  | 'delete'
  | 'home'
  | 'end'
  | 'page-up'
  | 'page-down'
  | `ctrl-${string}`;

/**
 * One key: a named one, a character as it was typed, or a text that was pasted: its first line, and all of several.
 * `tooLong`: nothing of it is taken.
 */
export type Key =
  | { readonly kind: 'named'; readonly name: NamedKey }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'paste'; readonly text: string; readonly whole?: string; readonly tooLong?: true };

export const named = (name: NamedKey): Key => ({ kind: 'named', name });
