import type { Answers } from '../../src/questions/answers.ts';
import { BLANK_MEANS } from '../../src/questions/lifting/means.ts';
import { chanceOf } from '../interviews/chance.ts';
import { simulatedShop } from '../interviews/shops.ts';

/** A simulated shop in a hall: building, supply and budget stop only what is largest, so that the rest has to decide. */
export function roomyShop(seed: number): Answers {
  const { between, pick } = chanceOf(seed + HALL);
  const shop = simulatedShop(seed);
  return {
    ...shop,
    shop: {
      ...shop.shop,
      bay: [between(6000, 10_000, 500), between(5500, 9000, 500)],
      ceiling: between(4000, 6500, 250),
      doorway: { width: between(3000, 5000, 250), height: between(3200, 5000, 250) },
      floorRating: pick([30, 40, 50]),
      power: { kVA: between(45, 120, 5), volts: 400, phases: 3 },
      air: { flow: between(250, 800, 50), bar: pick([6, 8, 10]) },
      lifting: [
        {
          ...BLANK_MEANS,
          by: 'hoist',
          capacity: pick([500, 1000, 2000, 5000]),
          hookHeight: between(1200, 3800, 200),
          legs: 2,
          slingAngle: 60,
          slingHeight: 400,
          rigging: 15,
        },
        { ...BLANK_MEANS, by: 'forklift', capacity: pick([1000, 2500]), loadCenter: 500 },
      ].slice(0, pick([1, 2])) as Answers['shop']['lifting'] & object,
    },
    money: { ...shop.money, budget: between(100_000, 700_000, 20_000) },
  };
}

/** Other chances than those that made the shop. */
const HALL = 200_000;
