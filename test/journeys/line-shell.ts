import { plainShell, type Surroundings } from '../../src/commands/plain/shell.ts';
import type { Session } from '../../src/session/session.ts';
import type { World } from '../../src/session/world.ts';

type Next = Surroundings['lines']['next'];

/** An interview line by line, 80 wide, that writes no file. `next` hears what was printed so far. */
export async function lineByLine(
  start: Session,
  world: World,
  {
    next,
    ...more
  }: { readonly next: (printed: string) => ReturnType<Next> } & Partial<Omit<Surroundings, 'lines'>>,
) {
  let printed = '';
  const left = await plainShell(start, world, {
    lines: { next: () => next(printed), stop: () => undefined, close: () => undefined },
    print: (text) => {
      printed += text;
    },
    width: () => 80,
    echo: false,
    perform: () => [],
    resultText: () => '',
    viewText: () => '',
    explainText: (_session, name) => name,
    trialText: () => '',
    ...more,
  });
  return { ...left, printed };
}
