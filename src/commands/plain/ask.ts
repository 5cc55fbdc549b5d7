import type { Readable, Writable } from 'node:stream';
import { plainAscii } from '../../report/exports/plain-ascii.ts';
import { TEXT_VIEWS } from '../../report/screen-lines.ts';
import type { Decision } from '../../rules/decision.ts';
import type { Session } from '../../session/session.ts';
import { noResultYet } from '../../session/step.ts';
import { unitsOf, type World } from '../../session/world.ts';
import { type Left, SIGNAL_CODES } from './farewell.ts';
import { type Disk, perform } from './perform.ts';
import { explainLines } from './print-explain.ts';
import { columnsOf } from './say.ts';
import { plainShell } from './shell.ts';
import { trialText } from './trial-text.ts';
import { type EndingSignal, typedLines } from './typed-lines.ts';

export interface PlainAround {
  readonly stdin: Readable & { readonly isTTY?: boolean };
  readonly stdout: Writable & { readonly columns?: number };
  readonly ascii: boolean;
  readonly disk: Disk;
  readonly text: (decision: Decision, look: { readonly width: number; readonly ascii: boolean }) => string;
}

/** Runs the line mode with the signals caught, and lets go of everything afterwards. */
export async function askLineByLine(session: Session, world: World, around: PlainAround): Promise<Left> {
  const { stdin, stdout, ascii, disk, text } = around;
  const lines = typedLines(stdin);
  const width = () => columnsOf(stdout);
  const handlers = (Object.keys(SIGNAL_CODES) as EndingSignal[]).map((signal) => {
    const handler = () => lines.stop(signal);
    process.on(signal, handler);
    return { signal, handler };
  });
  stdout.on('error', () => lines.stop('SIGHUP'));
  try {
    return await plainShell(session, world, {
      lines,
      print: (printed) => void stdout.write(ascii ? plainAscii(printed) : printed),
      width,
      echo: stdin.isTTY !== true,
      perform: (effect, now) => perform(effect, now, world, disk),
      resultText: ({ kept }) => {
        const decision = world.decision(kept);
        return decision === null ? '' : text(decision, { width: width(), ascii });
      },
      viewText: ({ kept }, view) => {
        const decision = view === 'ranges' ? world.decisionWithRanges(kept) : world.decision(kept);
        if (decision === null) return noResultYet(kept, world);
        return TEXT_VIEWS[view](decision, { width: width(), ascii }).join('\n');
      },
      explainText: ({ kept }, name) =>
        explainLines(name, { width: width(), ascii }, unitsOf(kept)).join('\n'),
      trialText: (now) => trialText(now, world, { width: width(), ascii }),
    });
  } finally {
    lines.close();
    for (const { signal, handler } of handlers) process.off(signal, handler);
  }
}
