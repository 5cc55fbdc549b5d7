import { writeSync } from 'node:fs';

/** Alternate screen, cleared; cursor hidden; pastes marked. */
const ENTER = '\u001b[?1049h\u001b[2J\u001b[H\u001b[?25l\u001b[?2004h';
/** No frame open, pastes unmarked, looks reset, cursor shown, back on the normal screen. */
const LEAVE = '\u001b[?2026l\u001b[?2004l\u001b[0m\u001b[?25h\u001b[?1049l';

interface RawInput {
  readonly isTTY?: boolean;
  setRawMode?(on: boolean): unknown;
}

let entered = false;

/** Written at once, past every buffer: the process may be about to end. A terminal that is gone takes nothing. */
function writeNow(text: string): void {
  try {
    writeSync(1, text);
  } catch {
    // nobody is there to read it
  }
}

function rawMode(stdin: RawInput, on: boolean): void {
  try {
    if (stdin.isTTY === true) stdin.setRawMode?.(on);
  } catch {
    // the terminal is gone
  }
}

/** Takes the terminal over, with `first` on it at once. Whatever ends the process gives it back. */
export function enterTerminal(first: string, stdin: RawInput = process.stdin): void {
  if (entered) return;
  entered = true;
  process.on('exit', onExit);
  rawMode(stdin, true);
  writeNow(`${ENTER}${first}`);
}

/** Gives the terminal back as it was; once is enough, more do no harm. */
export function leaveTerminal(stdin: RawInput = process.stdin): void {
  if (!entered) return;
  entered = false;
  process.off('exit', onExit);
  rawMode(stdin, false);
  writeNow(LEAVE);
}

const onExit = (): void => leaveTerminal();
