import type { Interval } from '../../quantities/interval.ts';
import type { Answers, Uncertain } from '../../questions/answers.ts';
import { likelyPart } from './likely-part.ts';
import { usually } from './usually.ts';

/**
 * Where answers usually lie in a small shop; common practice, no source. Only the order of questions is worked out from
 * these, never a result. Units as in the answers.
 */
const USUALLY = {
  'tools.shortest': { low: 60, high: 110 },
  'tools.longest': { low: 120, high: 220 },
  'tools.largestCutter': { low: 10, high: 32 },
  // room for one machine and its service doors, up to that of two
  'shop.bay': { low: 3000, high: 8000 },
  // from a low workshop to a light hall
  'shop.ceiling': { low: 2600, high: 5000 },
  // from a double door to a sectional door for vans
  'shop.doorway.width': { low: 1500, high: 4000 },
  'shop.doorway.height': { low: 2100, high: 4000 },
  'shop.doorSill': { low: 800, high: 1200 },
  'shop.floorRating': { low: 5, high: 30 },
  // from what is left of 16 A to a supply of 125 A, on three phases
  'shop.power.kVA': { low: 10, high: 80 },
  'shop.air.flow': { low: 100, high: 800 },
  'shop.air.bar': { low: 6, high: 10 },
  // from never to once a day
  'work.switchesPerWeek': { low: 0, high: 5 },
  'work.visesWanted': { low: 0, high: 3 },
  // from a small mill with a rotary to a large five-axis machine
  'money.budget': { low: 50_000, high: 500_000 },
  'money.shopRate': { low: 40, high: 120 },
  'money.rigging': { low: 1000, high: 8000 },
  'money.training': { low: 1000, high: 8000 },
  'money.yearlyCosts': { low: 500, high: 5000 },
} as const satisfies Record<string, Interval>;

type Path = keyof typeof USUALLY;

/** The same answers, with what is not known where it usually lies. */
export function likely(answers: Answers): Answers {
  const { tools, shop, work, money } = answers;
  const { doorway, power, air } = shop;
  const near = (answer: Uncertain, path: Path): Uncertain => usually(answer, USUALLY[path]);
  return {
    ...answers,
    parts: answers.parts.map(likelyPart),
    tools: {
      shortest: near(tools.shortest, 'tools.shortest'),
      longest: near(tools.longest, 'tools.longest'),
      largestCutter: near(tools.largestCutter, 'tools.largestCutter'),
    },
    shop: {
      ...shop,
      bay: [near(shop.bay[0], 'shop.bay'), near(shop.bay[1], 'shop.bay')],
      ceiling: near(shop.ceiling, 'shop.ceiling'),
      doorway: {
        width: near(doorway.width, 'shop.doorway.width'),
        height: near(doorway.height, 'shop.doorway.height'),
      },
      doorSill: near(shop.doorSill, 'shop.doorSill'),
      floorRating: near(shop.floorRating, 'shop.floorRating'),
      power: { ...power, kVA: near(power.kVA, 'shop.power.kVA') },
      air: { flow: near(air.flow, 'shop.air.flow'), bar: near(air.bar, 'shop.air.bar') },
    },
    work: {
      ...work,
      switchesPerWeek: near(work.switchesPerWeek, 'work.switchesPerWeek'),
      visesWanted: near(work.visesWanted, 'work.visesWanted'),
    },
    money: {
      ...money,
      budget: near(money.budget, 'money.budget'),
      shopRate: near(money.shopRate, 'money.shopRate'),
      rigging: near(money.rigging, 'money.rigging'),
      training: near(money.training, 'money.training'),
      yearlyCosts: near(money.yearlyCosts, 'money.yearlyCosts'),
    },
  };
}
