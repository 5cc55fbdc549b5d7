import { type InterviewOptions, interview } from '../../src/commands/interview.ts';
import { FAKE_CATALOG, fakeDecide } from '../session/fake-engine.ts';

/** The interview as a program of its own, for tests that need a process: pipes, signals, exit codes. */
const args = process.argv.slice(2);
const after = (name: string) => args[args.indexOf(name) + 1] ?? '';
const options: InterviewOptions = {
  plain: args.includes('--plain'),
  resume: args.includes('--resume'),
  askAll: args.includes('--ask-all'),
  input: !args.includes('--no-input'),
  ...(args.includes('--session') ? { session: after('--session') } : {}),
};
const { stdin, stdout, stderr, env } = process;
process.exitCode = await interview(
  options,
  { stdin, stdout, stderr, env, cwd: process.cwd() },
  {
    readCatalog: () => ({ ok: true, value: FAKE_CATALOG }),
    decide: fakeDecide,
    ask: null,
    text: ({ outcome, recommended }) => `The outcome: ${outcome}, ${recommended}\n`,
    json: ({ outcome }) => `{"outcome":"${outcome}"}\n`,
    paper: ({ outcome }, paper) => `# ${paper}\n\nThe outcome: ${outcome}\n`,
    markdown: ({ outcome }) => `# Decision\n\nThe outcome: ${outcome}\n`,
  },
);
