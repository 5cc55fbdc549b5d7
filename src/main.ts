#!/usr/bin/env node
import { runProgram } from './commands/program.ts';

declare const FIVESIDES_VERSION: string;

/** A fault of the program itself, not of what it was given. */
const FAULT = 1;

/** As where a file cannot be written. */
const UNWRITTEN = 2;

/** Gives the terminal back where it was taken over, so that what went wrong is seen. */
let giveBack = (): void => undefined;

function fault(error: unknown): void {
  giveBack();
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(`fivesides: a fault of the program: ${message}. FIVESIDES_DEBUG=1 shows where.\n`);
  if (process.env.FIVESIDES_DEBUG === '1' && error instanceof Error) process.stderr.write(`${error.stack}\n`);
  process.exitCode = FAULT;
}

// Whoever reads from us may stop reading (`| head`), or close the terminal: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE' || error.code === 'EIO') return;
  if (error.code !== 'ENOSPC') return fault(error);
  process.stderr.write('fivesides: what was to be printed is not all there: the disk is full.\n');
  process.exitCode = UNWRITTEN;
});
// Nothing can be said about it there, and saying it elsewhere would only fail again, without end.
process.stderr.on('error', () => undefined);
process.on('uncaughtException', (error) => {
  fault(error);
  process.exit();
});

try {
  // Each command is loaded only when it is asked for.
  const code = await runProgram(
    process.argv.slice(2),
    {
      interview: async (options) => {
        const { interviewMode } = await import('./commands/interview-mode.ts');
        const { stdin, stdout, stderr, env } = process;
        if (interviewMode({ options, stdin, stdout, env }) === 'screen')
          giveBack = (await import('./commands/early-frame.ts')).earlyFrame();
        const { interview } = await import('./commands/interview.ts');
        return interview(options, { stdin, stdout, stderr, env, cwd: process.cwd() });
      },
      decide: async (file, options) => {
        const { decideCommand } = await import('./commands/decide.ts');
        return decideCommand(file, options);
      },
      catalogCheck: async (folders) => {
        const { catalogCheck } = await import('./commands/catalog.ts');
        return catalogCheck(folders);
      },
      catalogImport: async (file, options) => {
        const { catalogImport } = await import('./commands/catalog-import.ts');
        return catalogImport(file, options);
      },
      catalogNew: async (what, options) => {
        const { catalogNew } = await import('./commands/catalog-new.ts');
        return catalogNew(what, options);
      },
      catalogDiff: async (folders, options) => {
        const { catalogDiffCommand } = await import('./commands/catalog-diff.ts');
        return catalogDiffCommand(folders, options);
      },
      catalogToCsv: async (folders, options) => {
        const { catalogToCsv } = await import('./commands/catalog-to-csv.ts');
        return catalogToCsv(folders, options);
      },
      verify: async (file) => {
        const { verifyCommand } = await import('./commands/verify.ts');
        return verifyCommand(file);
      },
      lesson: async (name, options) => {
        const { lessonCommand } = await import('./commands/lesson.ts');
        const { stdin, stdout, stderr, env } = process;
        return lessonCommand(name, options, { stdin, stdout, stderr, env });
      },
      explain: async (topic, options) => {
        const { explainCommand } = await import('./commands/explain.ts');
        return explainCommand(topic, options);
      },
    },
    {
      version: FIVESIDES_VERSION,
      print: (text) => void process.stdout.write(text),
      complain: (line) => void process.stderr.write(`${line}\n`),
    },
  );
  process.exitCode ??= code;
} catch (error) {
  fault(error);
}
