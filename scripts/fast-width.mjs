// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const LOOKS = /\u001b\[[0-9;]*m/g;
/** ASCII, letters of Latin, Greek and Cyrillic, arrows, lines, blocks and our own signs: always one column. */
const SIMPLE =
  /^[\u0020-\u007e\u00a1-\u00ac\u00ae-\u02ff\u0370-\u0482\u2010-\u2027\u2030-\u203b\u2190-\u21a8\u2200-\u22ff\u2500-\u25fc\u2713\u2717\u276f]*$/;
const MOST_KNOWN = 2000;
const known = new Map();

/** The real one prepares its tables when it is loaded, for as long as half a start of node: only when it is needed. */
let exact = null;
function exactWidth(text, options) {
  // the bundle holds it all the same
  exact ??= require('string-width').default;
  return exact(text, options);
}

/** The width of a text in columns, as the real one gives it, sooner. */
export default function stringWidth(text, options) {
  if (typeof text !== 'string' || text === '') return 0;
  const plain = text.includes('\u001b') ? text.replace(LOOKS, '') : text;
  if (options === undefined && SIMPLE.test(plain)) return plain.length;
  if (options !== undefined) return exactWidth(text, options);
  const found = known.get(text);
  if (found !== undefined) return found;
  if (known.size > MOST_KNOWN) known.clear();
  const width = exactWidth(text);
  known.set(text, width);
  return width;
}
