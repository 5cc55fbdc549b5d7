import { printable, UNPRINTABLE } from '../documents/printable.ts';

/**
 * Text from a file or a keyboard, safe to show on one line: breaks and tabs become a space, every other
 * character that could steer the display a visible escape.
 * Example: displayText('Wren\u202e\x1b[2J') → 'Wren\\u{202e}\\u{1b}[2J'.
 */
export const displayText = (text: string): string =>
  printable(text.replace(/[\t\n\v\f\r\u0085\u2028\u2029]+/g, ' '));

/**
 * The same inside quotes of JSON or YAML, by escapes that read back as what they were; line breaks stay.
 * Example: the JSON '"a\u202e"' → '"a\\u202e"'.
 */
export const escapeInQuotes = (text: string): string =>
  text.replace(UNPRINTABLE, (character) => (character === '\n' ? character : codeUnits(character)));

const codeUnits = (character: string): string =>
  Array.from({ length: character.length }, (_, index) => {
    const unit = character.charCodeAt(index).toString(16);
    return `\\u${unit.padStart(4, '0')}`;
  }).join('');
