import type { Metafile } from 'esbuild';

type Output = Metafile['outputs'][string];

/**
 * The files of a bundle that a command loads: the program's entry with all that it imports at once, and what the
 * command's own source brings, now or (`alsoLater`) when it asks for more. Example: loadedChunks(metafile, 'src/commands/decide.ts').
 */
export function loadedChunks({ outputs }: Metafile, command: string, alsoLater = true): readonly Output[] {
  const found = new Set<Output>();
  const entryOf = (source: string): Output => {
    const entry = Object.values(outputs).find(({ entryPoint }) => entryPoint === source);
    if (entry === undefined) throw new Error(`the bundle has no file for ${source}`);
    return entry;
  };
  const add = (output: Output | undefined, later: boolean): void => {
    if (output === undefined || found.has(output)) return;
    found.add(output);
    for (const { path, kind } of output.imports) {
      if (later || kind !== 'dynamic-import') add(outputs[path], later);
    }
  };
  add(entryOf(command), alsoLater);
  // the entry names every command, and loads but the one
  add(entryOf('src/main.ts'), false);
  return [...found];
}

/** Bytes that each package brings into these files. */
export function bytesByPackage(chunks: readonly Output[]): ReadonlyMap<string, number> {
  const bytes = new Map<string, number>();
  for (const { inputs } of chunks) {
    for (const [path, { bytesInOutput }] of Object.entries(inputs)) {
      const name = /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1];
      if (name !== undefined) bytes.set(name, (bytes.get(name) ?? 0) + bytesInOutput);
    }
  }
  return bytes;
}

/** What only the full-screen interview may load. */
export const DRAWING = ['ink', 'ink-select-input', 'react', 'react-reconciler', 'yoga-layout', 'scheduler'];
