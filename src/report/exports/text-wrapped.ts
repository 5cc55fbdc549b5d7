import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';

/** Words that are wider than a line are broken: a long name does not push the rest out of sight. */
export function wrapped(text: string, width: number, first: string, rest: string): readonly string[] {
  const room = Math.max(10, width - stringWidth(rest));
  return wrapAnsi(text, room, { hard: true, trim: true })
    .split('\n')
    .map((line, index) => `${index === 0 ? first : rest}${line}`.trimEnd());
}
