import { type Command, Option } from 'commander';
import { nearest } from '../documents/nearest.ts';

export const unitsOption = () =>
  new Option('--units <units>', 'units that are shown').choices(['mm', 'inch']);

/** What runs without a further command is where a mistyped one ends up. */
export function refuseUnknownCommand(program: Command): void {
  const [word] = program.args;
  if (word === undefined) return;
  const near = nearest(
    word,
    program.commands.map((each) => each.name()),
  );
  const hint = near === undefined ? '' : ` (did you mean ${near}?)`;
  program.error(`there is no command "${word}"${hint}`);
}
