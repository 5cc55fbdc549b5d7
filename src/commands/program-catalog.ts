import { type Command, Option } from 'commander';
import type { Commands, Options } from './program.ts';
import { refuseUnknownCommand, unitsOption } from './program-parts.ts';

/** `fivesides catalog` and what it can do. */
export function catalogCommands(program: Command, commands: Commands, finish: (code: number) => void): void {
  const catalog = program
    .command('catalog')
    .description('work on catalogs')
    .action((_options: Options, command: Command) => {
      refuseUnknownCommand(command);
      command.error('say what to do with the catalog: fivesides catalog check DIR…, or catalog import FILE');
    });
  catalog
    .command('check')
    .description('every problem of a catalog; what is hard to believe, of no use, or lacking in it')
    .argument('<dirs...>', 'folders of the catalog')
    .action(async (folders: string[], options: Options) => {
      finish(await commands.catalogCheck(folders, { ...program.opts<Options>(), ...options }));
    });
  catalog
    .command('import')
    .description('a table of rotaries or machines, as CSV or .xlsx, as a catalog')
    .argument('<file>', 'the table, headings with their units first')
    .allowExcessArguments(false)
    .option('--map <file>', 'what columns are that nobody could guess; the first run writes it')
    .option('--out <folder>', 'folder of the catalog (default: named after the table)')
    .option('--overwrite', 'replace files of an import before')
    .action(async (file: string, options: Options) => {
      finish(await commands.catalogImport(file, { ...program.opts<Options>(), ...options }));
    });
  catalog
    .command('new')
    .description('a row to fill in, every key with what it means')
    .argument('<what>', 'rotary or machine')
    .allowExcessArguments(false)
    .option('--class <class>', 'of a rotary: only what such a one has')
    .option('--kind <kind>', 'of a machine: only what such a one has')
    .addOption(new Option('--units <units>', 'units of bare numbers').choices(['mm', 'inch']))
    .option('--out <file>', 'write to a file')
    .option('--overwrite', 'replace a file that is there')
    .action(async (what: string, options: Options) => {
      finish(await commands.catalogNew(what, { ...program.opts<Options>(), ...options }));
    });
  catalog
    .command('diff')
    .description('rows and values in which two catalogs differ')
    .argument('<before>', 'folder of a catalog')
    .argument('<after>', 'folder of another')
    .allowExcessArguments(false)
    .addOption(new Option('--format <format>', 'how it is written').choices(['text', 'json']))
    .addOption(unitsOption())
    .action(async (before: string, after: string, options: Options) => {
      finish(await commands.catalogDiff([before, after], { ...program.opts<Options>(), ...options }));
    });
  catalog
    .command('to-csv')
    .description('the rotaries and machines of a catalog as tables that import reads back')
    .argument('<dirs...>', 'folders of the catalog')
    .option('--out <folder>', 'folder of the tables (default: this one)')
    .option('--overwrite', 'replace tables that are there')
    .action(async (folders: string[], options: Options) => {
      finish(await commands.catalogToCsv(folders, { ...program.opts<Options>(), ...options }));
    });
}
