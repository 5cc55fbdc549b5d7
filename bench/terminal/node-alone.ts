import { spawn } from 'node:child_process';

/** How long node runs on these arguments, in milliseconds, from start to exit; what it prints goes nowhere. */
export function timeOfNode(args: readonly string[], cwd: string): Promise<number> {
  const started = performance.now();
  const child = spawn(process.execPath, [...args], { stdio: 'ignore', cwd });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('exit', () => resolve(performance.now() - started));
  });
}

/** Node with nothing to do: what every start is compared with. */
export const nodeAlone = (cwd: string): Promise<number> => timeOfNode(['-e', '0'], cwd);
