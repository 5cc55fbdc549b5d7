import { spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundle } from '../../scripts/bundle.mjs';
import { folderWith } from '../temporary-folder.ts';

/** A folder of its own for one test; taken away when the tests of the file are over. */
export const emptyFolder = (): string => folderWith({});

/** The interview on a small catalog and an engine that stands in for the rules, as a program of its own. */
export async function buildProgram(): Promise<string> {
  const folder = emptyFolder();
  await bundle(folder, { interview: 'test/journeys/interview-entry.ts' });
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
  return join(folder, 'interview.js');
}

/** The whole program as it is shipped; `npm test` builds it before. */
export const REAL_PROGRAM = join(import.meta.dirname, '..', '..', 'dist', 'main.js');

export interface Run {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface RunOptions {
  readonly args: readonly string[];
  readonly cwd: string;
  /** piped in line by line; null: nothing is piped, standard input is closed at once */
  readonly lines: readonly string[] | null;
  readonly env?: Readonly<Record<string, string>>;
  /** how long it may take, in ms */
  readonly longest?: number;
  /** sent as soon as so many characters, or this text, came out; the lines are all written before, and standard input stays open */
  readonly kill?: { readonly signal: NodeJS.Signals; readonly after: number | string };
}

const LONGEST_MS = 60_000;

const isReached = (text: string, after: number | string): boolean =>
  typeof after === 'number' ? text.length >= after : text.includes(after);

/** Runs the program to its end. It is stopped, and the run fails, when it hangs. */
export function run(
  program: string,
  { args, cwd, lines, env = {}, kill, longest = LONGEST_MS }: RunOptions,
): Promise<Run> {
  return new Promise((resolve, reject) => {
    const { CI: _, ...own } = process.env;
    const child = spawn(process.execPath, [program, ...args], {
      cwd,
      env: { ...own, HOME: cwd, XDG_STATE_HOME: '', ...env },
    });
    let [stdout, stderr] = ['', ''];
    let killed = false;
    const timer = setTimeout(() => {
      child.kill('SIGKILL');
      reject(new Error(`the program hangs; it said:\n${stdout}\n${stderr}`));
    }, longest);
    child.stdout.setEncoding('utf8').on('data', (chunk: string) => {
      stdout += chunk;
      if (kill === undefined || killed || !isReached(stdout, kill.after)) return;
      killed = child.kill(kill.signal);
    });
    child.stderr.setEncoding('utf8').on('data', (chunk: string) => {
      stderr += chunk;
    });
    child.stdin.on('error', () => undefined);
    child.on('close', (code, signal) => {
      clearTimeout(timer);
      resolve({ code, signal, stdout, stderr });
    });
    if (lines !== null) child.stdin.write(lines.map((line) => `${line}\n`).join(''));
    if (kill === undefined) child.stdin.end();
  });
}
