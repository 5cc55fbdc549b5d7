import { chanceOf } from '../../bench/interviews/chance.ts';
import { ANSWERS } from './inputs/answers.ts';
import { CATALOG } from './inputs/catalog.ts';
import { IMPORT } from './inputs/import.ts';
import type { Came, FuzzedInput } from './inputs/input.ts';
import { LESSON } from './inputs/lesson.ts';
import { SESSION } from './inputs/session.ts';
import { TERMINAL } from './inputs/terminal.ts';
import { spoiled } from './spoil.ts';

export const INPUTS: readonly FuzzedInput[] = [ANSWERS, CATALOG, SESSION, LESSON, IMPORT, TERMINAL];

const SEED = Number(process.env.FIVESIDES_SEED ?? 20_261_127);
/** Of all inputs together; `npm run long` runs a hundred thousand. */
const CASES = Number(process.env.FIVESIDES_CASES ?? 5000);

export const countOf = ({ share }: FuzzedInput): number => Math.ceil((CASES * share) / 1000);

/** A case takes some milliseconds; this is work of the processor, whatever else runs. */
export const LONGEST_S = 5;

/** One case, the same for the same seed and number: bytes, and the chance that what is done with them is drawn from. */
export async function runCase(
  input: FuzzedInput,
  seeds: readonly Uint8Array[],
  number: number,
): Promise<Came> {
  const chance = chanceOf(SEED + number * 7919);
  const bytes = spoiled(seeds, chance);
  const from = process.cpuUsage();
  try {
    const came = await input.take(bytes, chance);
    const { user, system } = process.cpuUsage(from);
    if ((user + system) / 1e6 > LONGEST_S) throw new Error(`it takes ${(user + system) / 1e6} s`);
    return came;
  } catch (error) {
    const why = error instanceof Error ? (error.stack ?? error.message) : String(error);
    const shown = JSON.stringify(bytes.toString('utf8').slice(0, 6000));
    throw new Error(`${input.name}, seed ${SEED}, case ${number}: ${why}\n${shown}`);
  }
}
