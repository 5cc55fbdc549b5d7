const CALM_MS = 150;

/** Gives one time in milliseconds. */
export type Measured = () => Promise<number>;

/**
 * Measures each thing once a round, in turn, so that what slows the computer down meets all of them; the first round
 * does not count. Gives the medians in milliseconds, under the same names.
 */
export async function interleaved<Name extends string>(
  rounds: number,
  things: Readonly<Record<Name, Measured>>,
): Promise<Readonly<Record<Name, number>>> {
  const names = Object.keys(things) as Name[];
  const times = new Map(names.map((name): [Name, number[]] => [name, []]));
  for (let round = 0; round <= rounds; round += 1) {
    for (const name of names) {
      // what was ended before may still be being cleared away
      await new Promise((done) => setTimeout(done, CALM_MS));
      const time = await things[name]();
      if (round > 0) times.get(name)?.push(time);
    }
  }
  return Object.fromEntries(names.map((name) => [name, quantile(times.get(name) ?? [], 0.5)])) as Record<
    Name,
    number
  >;
}

/**
 * Milliseconds for which this process had a core, since it began. On a computer that is shared, what waits for a core is as
 * slow as what else runs; this is not.
 */
export function busyMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** The value below which this share lies. Example: quantile([3, 1, 2], 0.5) → 2. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  const found = sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
  if (found === undefined) throw new Error('nothing was measured');
  return found;
}

export const inMs = (time: number): string => `${time.toFixed(time < 20 ? 1 : 0)} ms`;
