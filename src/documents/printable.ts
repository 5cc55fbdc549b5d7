/**
 * Control characters, line and paragraph separators, marks that turn the direction of writing around, what has
 * no width, tags, and halves of surrogate pairs.
 */
export const UNPRINTABLE =
  /[\p{Cc}\p{Bidi_Control}\u00ad\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]|\p{Surrogate}/gu;

/** What no text holds: control characters but tabs and line ends. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
export const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;

/**
 * A text in which nothing can move the cursor, break the line or hide: what cannot be printed is written as
 * `\u{…}`. Example: printable('a\u001b[2J') → 'a\\u{1b}[2J'.
 */
export const printable = (text: string): string =>
  text.replace(UNPRINTABLE, (sign) => `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`);

const LONGEST = 60;

/**
 * A value from a file as it is shown in a message: short, on one line. Example: quoted('cube') → '"cube"',
 * quoted([1, 2]) → '[1, 2]', quoted({ a: 1 }) → 'a map'.
 */
export function quoted(value: unknown): string {
  if (value === null || value === undefined) return 'empty';
  if (typeof value === 'string') return `"${printable(shortened(value))}"`;
  if (Array.isArray(value)) return quotedList(value);
  if (typeof value === 'object') return 'a map';
  return String(value);
}

function quotedList(list: readonly unknown[]): string {
  const simple = list.length <= 4 && list.every((each) => typeof each !== 'object' || each === null);
  return simple ? `[${list.map(quoted).join(', ')}]` : `a list of ${list.length}`;
}

const shortened = (text: string): string =>
  text.length <= LONGEST ? text : `${[...text.slice(0, LONGEST)].slice(0, LONGEST - 1).join('')}…`;
