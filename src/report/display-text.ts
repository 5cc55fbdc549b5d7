/**
 * What can change how a terminal or a page shows the text around it: control characters, marks of writing
 * direction, characters without width, halves of surrogate pairs, tags. Letters of every script are fine.
 */
const HOSTILE =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|[\u{e0000}-\u{e007f}]|\p{Cs}/gu;

const escapeOf = (character: string): string => {
  const code = (character.codePointAt(0) ?? 0).toString(16);
  return code.length > 4 ? `\\u{${code}}` : `\\u${code.padStart(4, '0')}`;
};

/**
 * Text from a file or a keyboard, safe to show on one line: breaks and tabs become a space, every other
 * character that could steer the display a visible escape.
 * Example: displayText('Wren\u202e\x1b[2J') → 'Wren\\u202e\\u001b[2J'.
 */
export function displayText(text: string): string {
  return text.replace(/[\t\n\v\f\r\u0085\u2028\u2029]+/g, ' ').replace(HOSTILE, escapeOf);
}

/** The same for text whose line breaks have to stay, e.g. a file printed as it is. */
export function displayLines(text: string): string {
  return text
    .split(/\r\n|[\n\r]/)
    .map(displayText)
    .join('\n');
}

/** Escapes inside quoted JSON or YAML, where `\\u202e` is read back as what it was. */
export function escapeInQuotes(text: string): string {
  return text.replace(HOSTILE, (character) =>
    character === '\n'
      ? character
      : [...Array(character.length).keys()]
          .map((index) => `\\u${character.charCodeAt(index).toString(16).padStart(4, '0')}`)
          .join(''),
  );
}
