import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

const REPOSITORY = join(import.meta.dirname, '..', '..');
/** The program as it is shipped; `npm test` builds it before. */
export const PROGRAM = join(REPOSITORY, 'dist', 'main.js');
export const DEMO = join(REPOSITORY, 'catalog-demo');
if (!existsSync(PROGRAM)) throw new Error('build the program first: npm run build');

const LONGEST_MS = 50_000;

export interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** A program as bash starts it: what hangs is ended, whoever else is. */
export const command = (program: string): string => `timeout -k 1 40 ${process.execPath} ${program}`;

/** A line of bash, with the program as `$fivesides`; what is in `env` is there as variables. */
export function shell(line: string, cwd: string, env: Readonly<Record<string, string>> = {}): Ran {
  const { status, stdout, stderr } = spawnSync('bash', ['-c', line], {
    cwd,
    encoding: 'utf8',
    timeout: LONGEST_MS,
    env: { ...process.env, XDG_STATE_HOME: cwd, fivesides: command(PROGRAM), ...env },
  });
  return { status, stdout, stderr };
}

/** The program, running; its input stays open. */
export function running(args: readonly string[], cwd: string) {
  return spawn(process.execPath, [PROGRAM, ...args], {
    cwd,
    env: { ...process.env, XDG_STATE_HOME: cwd },
    stdio: ['pipe', 'pipe', 'pipe'],
  });
}

/** Why a line of bash cannot be run here, said in the name of a test; null: it can. */
export function cannot(line: string): string | null {
  const { status, stderr } = spawnSync('bash', ['-c', line], { encoding: 'utf8', timeout: LONGEST_MS });
  return status === 0 ? null : stderr.trim().split('\n').at(-1) || 'it fails';
}
