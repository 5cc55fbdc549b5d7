import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Terminal } from './harness.ts';

const INNER = 'echo $$ > app.pid; exec "$@"';
const OUTER = `sh -c '${INNER}' sh "$@"; code=$?; stty -a; echo "ended with $code "`;

/** Arguments of bash before a command that it runs; afterwards it shows the modes of the terminal and the exit code. */
export const UNDER_BASH: readonly string[] = ['--norc', '--noprofile', '-c', OUTER, 'bash'];

/** The process that was run so. */
export const appOf = ({ cwd }: Terminal): number => Number(readFileSync(join(cwd, 'app.pid'), 'utf8'));
