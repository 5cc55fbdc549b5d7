import type { Metafile } from 'esbuild';

export function bundle(outdir: string, entryPoints?: Readonly<Record<string, string>>): Promise<Metafile>;
