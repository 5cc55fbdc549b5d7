import type { LengthUnits } from '../../quantities/kinds.ts';

/** Makes something for each kind of units once, and gives out the same ever after. */
export function oncePerUnits<Made>(make: (units: LengthUnits) => Made): (units: LengthUnits) => Made {
  const made = new Map<LengthUnits, Made>();
  return (units) => {
    const before = made.get(units);
    if (before !== undefined) return before;
    const now = make(units);
    made.set(units, now);
    return now;
  };
}
