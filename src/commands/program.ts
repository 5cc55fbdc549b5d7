import { Command, CommanderError, Option } from 'commander';
import { printable } from '../documents/printable.ts';
import { UNUSABLE } from './outcome-codes.ts';
import { catalogCommands } from './program-catalog.ts';
import { refuseUnknownCommand, unitsOption } from './program-parts.ts';

/** What a command line can ask for. Each gives the exit code. */
export interface Commands {
  readonly interview: (options: Options) => Promise<number>;
  readonly decide: (file: string, options: Options) => Promise<number>;
  readonly catalogCheck: (folders: readonly string[], options: Options) => Promise<number>;
  readonly catalogImport: (file: string, options: Options) => Promise<number>;
  readonly catalogNew: (what: string, options: Options) => Promise<number>;
  readonly catalogDiff: (folders: readonly [string, string], options: Options) => Promise<number>;
  readonly catalogToCsv: (folders: readonly string[], options: Options) => Promise<number>;
  readonly verify: (file: string) => Promise<number>;
  readonly lesson: (name: string | undefined, options: Options) => Promise<number>;
  readonly explain: (topic: string | undefined, options: Options) => Promise<number>;
}

export interface Options {
  readonly catalog?: readonly string[];
  readonly session?: string;
  readonly resume?: boolean;
  readonly askAll?: boolean;
  readonly parts?: string;
  readonly plain?: boolean;
  readonly ascii?: boolean;
  readonly color?: 'auto' | 'always' | 'never';
  readonly units?: 'mm' | 'inch';
  readonly input?: boolean;
  readonly format?: 'text' | 'json' | 'markdown';
  readonly out?: string;
  readonly all?: boolean;
  readonly map?: string;
  readonly overwrite?: boolean;
  readonly forClass?: boolean;
  readonly learner?: string;
  readonly scores?: string;
  readonly worksheet?: string;
  readonly solutions?: string;
  readonly practice?: string;
  readonly seed?: string;
  readonly level?: string;
  readonly variants?: string;
  readonly class?: string;
  readonly kind?: string;
}

export interface Usage {
  readonly version: string;
  readonly print: (text: string) => void;
  readonly complain: (line: string) => void;
}

/**
 * Reads the command line (without node and the program's own name) and runs what it asks for. Gives the exit code;
 * a command line that cannot be understood is 2, with one line that says why.
 */
export async function runProgram(
  argv: readonly string[],
  commands: Commands,
  { version, print, complain }: Usage,
): Promise<number> {
  let code = 0;
  const program = commandLine(commands, version, (result) => {
    code = result;
  });
  const output = {
    writeOut: print,
    writeErr: complain,
    // all that goes wrong is thrown, and said below in one line
    outputError: () => {},
  };
  for (const each of [program, ...program.commands, ...program.commands.flatMap((inner) => inner.commands)]) {
    each.exitOverride().configureOutput(output);
  }
  try {
    await program.parseAsync([...argv], { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode === 0) return 0;
    // a group of commands without one of them has shown what there is
    if (error.code !== 'commander.help') {
      complain(printable(`fivesides: ${error.message.replace(/^error: /, '').replace(/\s*\n\s*/g, ' ')}`));
    }
    return UNUSABLE;
  }
  return code;
}

const collect = (folder: string, before: readonly string[] | undefined): readonly string[] => [
  ...(before ?? []),
  folder,
];

const catalogOption = () =>
  new Option(
    '--catalog <dir>',
    'folder of a catalog; may be given several times (default: the demo)',
  ).argParser(collect);
const asciiOption = () => new Option('--ascii', 'plain ASCII characters only');
const colorOption = () => new Option('--color <when>', 'color').choices(['auto', 'always', 'never']);
const inputOption = () => new Option('--no-input', 'never ask');

function commandLine(commands: Commands, version: string, finish: (code: number) => void): Command {
  const program = new Command('fivesides')
    .description('Goes from your parts to a five-axis arrangement, with every number shown.')
    .version(version, '--version', 'print the version')
    .helpOption('-h, --help', 'print this')
    .enablePositionalOptions()
    .helpCommand('help [command]', 'print this, or how a command is used')
    .allowExcessArguments()
    .addOption(catalogOption())
    .option('--session <file>', 'where the interview is kept')
    .option('--resume', 'go on with the interview that is kept')
    .option('--ask-all', 'ask every question, also where it cannot change the result any more')
    .option('--parts <file>', 'begin with the parts of a table: CSV, or with tabs, from a spreadsheet')
    .option('--plain', 'line by line, for screen readers and pipes')
    .addOption(asciiOption())
    .addOption(colorOption())
    .addOption(unitsOption())
    .addOption(inputOption())
    .action(async (options: Options, command: Command) => {
      refuseUnknownCommand(command);
      finish(await commands.interview(options));
    });
  program
    .command('decide')
    .description('decide on an answers file; - reads standard input')
    .argument('<answers>', 'the answers file')
    .allowExcessArguments(false)
    .addOption(catalogOption())
    .addOption(new Option('--format <format>', 'how it is written').choices(['text', 'json', 'markdown']))
    .option('--out <file>', 'write to a file')
    .option('--all', 'list every arrangement')
    .addOption(asciiOption())
    .addOption(colorOption())
    .addOption(unitsOption())
    .addOption(inputOption())
    .action(async (file: string, options: Options) => {
      finish(await commands.decide(file, { ...program.opts<Options>(), ...options }));
    });
  catalogCommands(program, commands, finish);
  program
    .command('verify')
    .description('work out every number of an exported decision again; - reads standard input')
    .argument('<file>', 'a decision in JSON, or a whole report in Markdown')
    .allowExcessArguments(false)
    .action(async (file: string) => {
      finish(await commands.verify(file));
    });
  explainCommand(program, commands, finish);
  lessonCommand(program, commands, finish);
  return program;
}

function explainCommand(program: Command, commands: Commands, finish: (code: number) => void): void {
  program
    .command('explain')
    .description('what a check, a rule, an assumption or a word means, with an example worked out; lists all')
    .argument('[topic...]', 'its name, as it stands in a report or in the list')
    .addOption(new Option('--format <format>', 'how it is written').choices(['text', 'markdown']))
    .option('--out <file>', 'write to a file')
    .addOption(asciiOption())
    .addOption(unitsOption())
    .action(async (topic: readonly string[], options: Options) => {
      const name = topic.length === 0 ? undefined : topic.join(' ');
      finish(await commands.explain(name, { ...program.opts<Options>(), ...options }));
    });
}

/** Of a lesson `--class` is no kind of rotary. */
type LessonFlags = Omit<Options, 'class'> & { readonly class?: boolean };

function lessonCommand(program: Command, commands: Commands, finish: (code: number) => void): void {
  program
    .command('lesson')
    .description('a lesson: predict, reveal, why; lists all')
    .argument('[lesson]', 'its name in the list, or a file of your own')
    .allowExcessArguments(false)
    .option(
      '--practice <subject>',
      'draws an exercise about a check, a rule, a feature, a stage, or a whole case',
    )
    .option('--level <1-3>', 'how near the line it is, 3 is nearest; usual: 1')
    .option('--class', 'for a class: large and quiet, one key shows the next thing')
    .option('--plain', 'line by line, for screen readers and pipes')
    .option('--learner <name>', 'whose points are kept, where several learn at one computer')
    .option('--scores <file>', 'write all points that are kept, as CSV')
    .option('--worksheet <file>', 'write it to be worked on paper, in Markdown')
    .option('--solutions <file>', 'write its key, every step with numbers')
    .option('--variants <number>', 'so many worksheets, each with numbers of its own')
    .option('--seed <number>', 'which numbers; left out: those of the lesson, or any exercise')
    .option('--overwrite', 'replace files that are there')
    .addOption(catalogOption())
    .addOption(asciiOption())
    .addOption(colorOption())
    .addOption(unitsOption())
    .action(async (name: string | undefined, options: LessonFlags) => {
      const { class: isClass = false, ...others } = options;
      const forClass = isClass ? { forClass: true } : {};
      finish(await commands.lesson(name, { ...program.opts<Options>(), ...others, ...forClass }));
    });
}
