import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** What the doc comment of a formula says. */
export interface FormulaDoc {
  readonly file: string;
  readonly name: string;
  readonly lines: Readonly<Record<(typeof LINES)[number], readonly string[]>>;
}

export const LINES = ['Formula', 'Symbols', 'Valid', 'Source', 'Example'] as const;

const ROOM = 'src/mechanics';

/** Where the doc comments are as they were written: a copy with mutants in it has them elsewhere. */
const AS_WRITTEN = process.env.SOURCES_AS_WRITTEN ?? '.';

export function mechanicsFiles(): readonly string[] {
  return readdirSync(ROOM, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => join(ROOM, path))
    .sort();
}

/** The doc comment that ends right above a declaration, without its stars. */
function commentAbove(text: string, at: number): string {
  const above = text.slice(0, at).trimEnd();
  if (!above.endsWith('*/')) return '';
  return above
    .slice(above.lastIndexOf('/**'))
    .split('\n')
    .map((line) => line.replace(/^\s*(\/\*\*|\*\/|\*)/, '').trim())
    .join('\n');
}

/** Every exported function of a file, and every exported table (a constant in capitals), with its lines. */
export function formulasOf(file: string): readonly FormulaDoc[] {
  const text = readFileSync(join(AS_WRITTEN, file), 'utf8');
  const declarations = text.matchAll(/^export (?:function (\w+)|const (\w+)\b)/gm);
  return [...declarations].map((found) => {
    const comment = commentAbove(text, found.index);
    const read = (line: string): string[] =>
      [...comment.matchAll(new RegExp(`^${line}: (.+)$`, 'gm'))].map((match) => match[1] ?? '');
    return {
      file,
      name: found[1] ?? found[2] ?? '',
      lines: {
        Formula: read('Formula'),
        Symbols: read('Symbols'),
        Valid: read('Valid'),
        Source: read('Source'),
        Example: read('Example'),
      },
    };
  });
}
