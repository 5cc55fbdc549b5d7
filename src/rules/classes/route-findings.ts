import { type OwnMill, ROUTES, type Route, type RouteFinding } from '../decision-classes.ts';
import { bounded } from '../judging/value.ts';
import type { Judged } from '../weighing/judged.ts';
import { type BestOf, tallyOf } from './best-of.ts';
import { isOnRoute, type RouteGround } from './routes/ground.ts';
import { ROUTE_RULES } from './routes/index.ts';
import { argumentsOf, findingOf } from './speak.ts';

type Common = Omit<RouteGround, 'route' | 'judged' | 'tables'>;

/** Every route with its finding; and, where a mill is owned, what it takes and what the next purchase adds. */
export function routeFindings(common: Common, bestOf: BestOf): Route {
  const { machine } = common.answers.shop;
  const routes = ROUTES.map((route): RouteFinding => {
    const judged = common.all.filter((each) => isOnRoute(route, each, machine));
    const said = argumentsOf(ROUTE_RULES, route, { ...common, route, judged, tables: [] });
    const passes = judged.some((each) => each.passes === 'yes');
    return {
      route,
      finding: findingOf(ROUTE_RULES, said, passes),
      for: said.filter(({ side }) => side === 'for'),
      against: [
        ...said.filter(({ side }) => side === 'rules out'),
        ...said.filter(({ side }) => side === 'against'),
      ],
      ...tallyOf(judged, bestOf),
    };
  });
  return { routes, ownMill: ownMill(common, bestOf) };
}

/** More rotaries than these are not read. */
const MOST_TAKEN = 5;

function ownMill({ all, answers, families }: Common, bestOf: BestOf): OwnMill | null {
  const { machine } = answers.shop;
  const own = all.filter(({ setUp }) => setUp.candidate.machine.row.id === machine);
  if (own.length === 0) return null;
  const takes: Judged[] = [];
  let left = own.filter(({ passes }) => passes === 'yes');
  for (let best = bestOf(left); best !== null && takes.length < MOST_TAKEN; best = bestOf(left)) {
    const { key } = best.setUp.candidate.rotary;
    takes.push(best);
    left = left.filter(({ setUp }) => setUp.candidate.rotary.key !== key);
  }
  const [first] = takes;
  const total = families.reduce(
    (sum, { hours }) => ({ low: sum.low + hours.low, high: sum.high + hours.high }),
    {
      low: 0,
      high: 0,
    },
  );
  return {
    machine,
    takes: takes.map(({ id, setUp, coverage, priced }) => ({
      id,
      rotary: setUp.candidate.rotary.key,
      coverage: bounded(coverage),
      price: bounded(priced.total),
    })),
    next: first === undefined ? null : nextPurchase(first, all, total),
  };
}

/** The cheapest that surely covers more than the best on the mill that is owned. */
function nextPurchase(
  first: Judged,
  all: readonly Judged[],
  total: { readonly low: number; readonly high: number },
): OwnMill['next'] {
  const more = all.filter(
    ({ passes, coverage }) => passes === 'yes' && coverage.low > first.coverage.high + 1e-9,
  );
  const [next] = [...more].sort(
    (a, b) =>
      a.priced.total.high - b.priced.total.high || b.coverage.low - a.coverage.low || (a.id < b.id ? -1 : 1),
  );
  if (next === undefined) return null;
  const added = {
    low: next.coverage.low - first.coverage.high,
    high: next.coverage.high - first.coverage.low,
  };
  const [price, before] = [next.priced.total, first.priced.total];
  return {
    id: next.id,
    coverage: bounded(next.coverage),
    price: bounded(price),
    addsHours: bounded({ low: added.low * total.low, high: added.high * total.high }),
    addsPrice: bounded({ low: price.low - before.high, high: price.high - before.low }),
  };
}
