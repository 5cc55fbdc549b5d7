import type { Metafile } from 'esbuild';

/** Bundles the program, or other entries the same way, into a folder; gives what went into each file. */
export function bundle(outdir: string, entryPoints?: Readonly<Record<string, string>>): Promise<Metafile>;
