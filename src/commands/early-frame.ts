import { enterTerminal, leaveTerminal } from '../ui/shell/terminal.ts';

/** Puts something on the screen while the rest of the program is still being read; gives what takes it back. */
export function earlyFrame(): () => void {
  enterTerminal('fivesides\r\n\r\nReading the catalog ...');
  return () => leaveTerminal();
}
