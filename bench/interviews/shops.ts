import { type Answers, type Lifting, MEASURES, type Measure } from '../../src/questions/answers.ts';
import { blankAnswers } from '../../src/questions/blank-answers.ts';
import { BLANK_MEANS } from '../../src/questions/lifting/means.ts';
import { type Chance, chanceOf } from './chance.ts';
import { familiesFor } from './families.ts';

/**
 * A shop that knows everything about itself, by chance, the same for the same seed: what somebody would answer who left
 * nothing open. It stands before the demo catalog. Example: simulatedShop(7).parts.length → 1, 2 or 3.
 */
export function simulatedShop(seed: number): Answers {
  const chance = chanceOf(seed);
  const { between, pick, happens } = chance;
  return {
    ...blankAnswers('EUR'),
    parts: familiesFor(chance),
    tools: {
      shortest: between(70, 100, 5),
      longest: between(130, 210, 5),
      largestCutter: pick([12, 16, 20, 25]),
    },
    shop: {
      machine: 'none',
      bay: [between(3200, 7000, 200), between(3000, 6000, 200)],
      ceiling: between(2800, 5000, 100),
      doorway: { width: between(1600, 3600, 100), height: between(2200, 3600, 100) },
      doorSill: between(900, 1200, 50),
      floorRating: pick([10, 15, 20, 30]),
      power: happens(0.85)
        ? { kVA: between(20, 70, 5), volts: 400, phases: 3 }
        : { kVA: between(8, 16, 2), volts: 230, phases: 1 },
      air: { flow: between(100, 500, 50), bar: pick([6, 7, 8]) },
      lifting: meansOf(chance),
    },
    work: {
      threeAxisShare: between(0, 0.6, 0.1),
      switchesPerWeek: between(0, 4),
      visesWanted: between(0, 2),
      vise: { width: 'unknown', length: 'unknown', height: 75 },
      loading: pick(['by-hand', 'by-hand', 'pallet']),
      swap: pick(['zero-point', 'keyed', 'trammed']),
    },
    money: {
      budget: between(60_000, 320_000, 10_000),
      shopRate: between(45, 110, 5),
      years: between(4, 8),
      interest: pick([0.03, 0.05, 0.07]),
      rigging: between(1500, 8000, 500),
      training: between(1000, 6000, 500),
      yearlyCosts: between(1000, 5000, 500),
      residual: between(5000, 40_000, 5000),
      plates: 'unknown',
    },
    control: { cam: pick(['none', 'threeAxis', 'fiveAxis']) },
    matters: orderOf(chance),
  };
}

function meansOf({ between, pick, happens }: Chance): readonly Lifting[] {
  if (happens(0.15)) return [{ ...BLANK_MEANS, by: 'hand', people: 2, reach: 400, from: 750, lift: 250 }];
  return [
    {
      ...BLANK_MEANS,
      by: 'hoist',
      capacity: pick([250, 500, 1000, 2000]),
      hookHeight: between(2200, 3600, 100),
      legs: 2,
      slingAngle: 60,
      slingHeight: between(300, 600, 50),
      rigging: between(5, 20, 5),
    },
  ];
}

/** Most shops look at what is covered first; some at the money. */
function orderOf({ pick }: Chance): readonly Measure[] {
  const first: readonly Measure[] = pick<readonly Measure[]>([
    ['coverage', 'price'],
    ['coverage', 'viseStations', 'payback'],
    ['price', 'coverage'],
    ['coverage', 'payback'],
  ]);
  return [...first, ...MEASURES.filter((each) => !first.some((other) => other === each))];
}
