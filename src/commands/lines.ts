/** Where lines go, so that tests can stand in for it. */
export interface Lines {
  readonly result: (line: string) => void;
  readonly remark: (line: string) => void;
}

export const PROCESS_LINES: Lines = {
  result: (line) => void process.stdout.write(`${line}\n`),
  remark: (line) => void process.stderr.write(`${line}\n`),
};
