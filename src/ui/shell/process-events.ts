import { leaveTerminal } from './terminal.ts';

/** Signals that end the interview. */
export type EndingSignal = 'SIGINT' | 'SIGTERM' | 'SIGHUP' | 'SIGQUIT';
const SIGNALS: readonly EndingSignal[] = ['SIGINT', 'SIGTERM', 'SIGHUP', 'SIGQUIT'];

export interface Watched {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly onEnd: (signal: EndingSignal) => void;
  /** the program was stopped, and goes on */
  readonly onContinue: () => void;
}

export interface Watch {
  /** Stops the program until the shell goes on with it. */
  readonly suspend: () => void;
  readonly stop: () => void;
}

/** Where nobody can stop us, we go on by ourselves after so long. */
const NOT_STOPPED_MS = 300;

/** Listens to what happens to the process and its terminal. */
export function watchProcess({ stdin, stdout, onEnd, onContinue }: Watched): Watch {
  const handlers = SIGNALS.map((signal) => ({ signal, handler: () => onEnd(signal) }));
  for (const { signal, handler } of handlers) process.on(signal, handler);
  const gone = (): void => onEnd('SIGHUP');
  // before whoever else says what went wrong, so that it is said on the normal screen
  const crashed = (): void => leaveTerminal(stdin);
  let timer: NodeJS.Timeout | undefined;
  const goesOn = (): void => {
    clearTimeout(timer);
    onContinue();
  };
  process.on('SIGCONT', goesOn);
  process.prependListener('uncaughtException', crashed);
  stdin.on('end', gone);
  stdin.on('error', gone);
  stdout.on('error', gone);
  return {
    suspend: () => {
      clearTimeout(timer);
      timer = setTimeout(goesOn, NOT_STOPPED_MS);
      process.kill(0, 'SIGTSTP');
    },
    stop: () => {
      clearTimeout(timer);
      // while a signal is handed round, whoever draws counts the listeners: were it alone, it would end the process
      setImmediate(() => {
        for (const { signal, handler } of handlers) process.off(signal, handler);
      });
      process.off('SIGCONT', goesOn);
      process.off('uncaughtException', crashed);
      stdin.off('end', gone);
      stdin.off('error', gone);
      stdout.off('error', gone);
    },
  };
}
