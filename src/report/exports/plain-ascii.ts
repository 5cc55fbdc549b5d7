/** Symbols of units, formulas and sentences that a plain terminal may lack, and how they are written there. */
const ASCII: Readonly<Record<string, string>> = {
  '·': '*',
  '×': 'x',
  '°': ' deg',
  '±': '+/-',
  '−': '-',
  '–': '-',
  '—': '-',
  '≤': '<=',
  '≥': '>=',
  '√': 'sqrt',
  '½': '1/2',
  '⅔': '2/3',
  µ: 'u',
  μ: 'u',
  '²': '^2',
  '³': '^3',
  '⁶': '^6',
  β: 'beta',
  δ: 'delta',
  θ: 'theta',
  π: 'pi',
  '→': '->',
  '′': "'",
  '…': '...',
  '“': '"',
  '”': '"',
  '’': "'",
  '\u202f': '',
};

/** Text with the program's own symbols in ASCII; letters in names stay as they are. Example: N·m → N*m. */
export const plainAscii = (text: string): string =>
  text.replace(/[^ -~\n]/g, (character) => ASCII[character] ?? character);
