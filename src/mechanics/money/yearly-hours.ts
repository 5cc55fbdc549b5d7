/** What one family takes in a year. */
interface YearlyWork {
  readonly quantity: number;
  readonly lots: number;
  /** holdings of each part */
  readonly setups: number;
  readonly setupMinutes: number;
  readonly cycleMinutes: number;
  readonly handlingMinutes: number;
}

/**
 * Machine hours a year: setting up each lot for each holding, and cutting and handling each part.
 *
 * Formula: (lots·setups·t_s + quantity·(t_c + setups·t_h))/60
 * Symbols: t_s minutes of a setup; t_c cutting minutes of a part; t_h handling minutes of a part at each holding
 * Valid: nothing negative
 * Source: batch time S + Q·T_c of courses in production planning, for each holding and lot
 * Example: yearlyHours({ quantity: 400, lots: 12, setups: 4, setupMinutes: 35, cycleMinutes: 18, handlingMinutes: 3 }) → 228
 */
export function yearlyHours(work: YearlyWork): number {
  const { quantity, lots, setups, setupMinutes, cycleMinutes, handlingMinutes } = work;
  if (Math.min(quantity, lots, setups, setupMinutes, cycleMinutes, handlingMinutes) < 0) {
    throw new RangeError('Neither parts, lots, holdings nor minutes can be negative.');
  }
  return (lots * setups * setupMinutes + quantity * (cycleMinutes + setups * handlingMinutes)) / 60;
}
