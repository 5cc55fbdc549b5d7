import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

const REPOSITORY = join(import.meta.dirname, '..', '..');
/** The program as it is shipped; `npm test` builds it before. */
const PROGRAM = join(REPOSITORY, 'dist', 'main.js');
if (!existsSync(PROGRAM)) throw new Error('build the program first: npm run build');

const LONGEST_MS = 200_000;

interface Ran {
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

/** A program that asks; what it says can be waited for, and answered then. */
export function talking(program: string, args: readonly string[], cwd: string) {
  const child = spawn(process.execPath, [program, ...args], {
    cwd,
    env: { ...process.env, XDG_STATE_HOME: cwd },
    timeout: LONGEST_MS,
    killSignal: 'SIGKILL',
  });
  let [stdout, stderr] = ['', ''];
  let look = (): void => undefined;
  child.stdout.on('data', (data: Buffer) => {
    stdout += data.toString();
    look();
  });
  child.stderr.on('data', (data: Buffer) => {
    stderr += data.toString();
  });
  const ended = new Promise<Ran>((done) => {
    child.on('close', (status) => done({ status, stdout, stderr }));
  });
  const heard = (words: string) =>
    new Promise<void>((done) => {
      look = () => (stdout.includes(words) ? done() : undefined);
      look();
    });
  return {
    /** Until it has said these words, or ended. */
    said: (words: string) => Promise.race([heard(words), ended]),
    /** All of these lines, and no more after them. */
    answer: (lines: readonly string[]) => child.stdin.end(`${lines.join('\n')}\n`),
    ended,
  };
}

/** Why a line of bash cannot be run here, said in the name of a test; null: it can. */
export function cannot(line: string): string | null {
  const { status, stderr } = spawnSync('bash', ['-c', line], { encoding: 'utf8', timeout: LONGEST_MS });
  return status === 0 ? null : stderr.trim().split('\n').at(-1) || 'it fails';
}
