import type { Stated } from '../../catalog/catalog.ts';
import { eyeBoltRating } from '../../mechanics/lifting/eye-bolt-rating.ts';
import { loadCenter } from '../../mechanics/lifting/forklift-capacity.ts';
import { isUsableSlingAngle, slingLegTension } from '../../mechanics/lifting/sling-leg-tension.ts';
import type { Interval } from '../../quantities/interval.ts';
import { groundOf, type World } from '../arranging/setting.ts';
import type { Verdict } from '../decision.ts';
import type { LiftingDecision, LiftingMeans, SlingNeeds } from '../decision-lifting.ts';
import { corners } from '../facts/corners.ts';
import type { Case } from '../judging/case.ts';
import { compare } from '../judging/compare.ts';
import { worse } from '../judging/outcome.ts';
import { evaluateTerm, folded } from '../judging/side.ts';
import type { HoistCase } from '../judging/site-case.ts';
import { bounded } from '../judging/value.ts';
import { capabilityOf, liftedMass } from '../sides/lifting/capability.ts';
import { hookNeeds, hookThere } from '../sides/lifting/hook.ts';
import type { Judged } from './judged.ts';

/** The least effort first: hands need nothing, a forklift no slings over the work, a hoist both. */
const ORDER: readonly LiftingMeans['by'][] = ['hand', 'forklift', 'hoist'];

/** Every means of the shop against the rotary, and the best that suffices; null: the table is built in. */
export function liftingOf({ setUp, swaps }: Judged, world: World): LiftingDecision | null {
  const { candidate, setting } = setUp;
  if (candidate.machine.builtIn) return null;
  const of = groundOf(world, candidate, setting);
  const mass = evaluateTerm(liftedMass, of);
  const { lifting } = of.shop.site;
  const means = (lifting ?? []).map((_, index) => meansOf(of, mass, index));
  const byEffort = ORDER.flatMap((by) => means.flatMap((each, index) => (each.by === by ? [index] : [])));
  const chosen = byEffort.find((index) => means[index]?.verdict === 'holds') ?? null;
  const isOpen = lifting === null || means.some(({ verdict }) => verdict === 'open');
  const none = swaps.high === 0 ? 'stays-on' : isOpen || swaps.low === 0 ? 'open' : 'none';
  return {
    mass: bounded(mass),
    swaps: bounded(swaps),
    means,
    outcome: chosen === null ? none : 'chosen',
    chosen,
  };
}

function meansOf(of: Case, mass: Interval, index: number): LiftingMeans {
  const means = of.shop.site.lifting?.[index];
  if (means === undefined) throw new Error(`there is no means of lifting ${index}`);
  const able = evaluateTerm(capabilityOf(of, index), of);
  const carries = verdictOf(mass, able);
  const common = { by: means.by, need: bounded(mass), have: bounded(able) };
  const nothing = { people: null, loadCenter: null, sling: null };
  switch (means.by) {
    case 'hand':
      return { ...common, ...nothing, verdict: carries, people: bounded(means.people) };
    case 'forklift':
      return { ...common, ...nothing, verdict: carries, loadCenter: bounded(centerOf(of)) };
    case 'hoist': {
      const need = folded(
        'greatest',
        hookNeeds(index).map((each) => evaluateTerm(each, of)),
      );
      const have = evaluateTerm(hookThere(index), of);
      const hook = { hookNeed: bounded(need), hookHave: bounded(have) };
      const sling = { ...hook, ...slingOf(mass, means, of.rotary.row?.liftingPoints) };
      return { ...common, ...nothing, verdict: worse(carries, verdictOf(need, have)), sling };
    }
  }
}

function verdictOf(need: Interval, have: Interval): Verdict {
  const { surely, perhaps } = compare('at-most', need, have);
  return surely ? 'holds' : perhaps ? 'open' : 'fails';
}

/** Half of the longer side of the base. */
const centerOf = ({ rotary: { baseAlong, baseAcross } }: Case): Interval =>
  corners([baseAlong, baseAcross], ([along = 0, across = 0]) => loadCenter(Math.max(along, across)));

/** Pull on a leg, and the rating that the eye bolt under it needs: an angle costs it more than it costs the leg. */
function slingOf(
  mass: Interval,
  { legs, slingAngle }: HoistCase,
  points: Stated | undefined,
): Pick<SlingNeeds, 'legPull' | 'eyeBolt'> {
  // on one lifting point one straight leg carries all, however many the sling has
  if (points === 1) return { legPull: bounded(mass), eyeBolt: bounded(mass) };
  if (legs.high >= 2 && !isUsableSlingAngle(slingAngle.low)) return { legPull: null, eyeBolt: null };
  const inputs = [mass, legs, slingAngle];
  const pull = ([load = 0, count = 1, angle = 90]: readonly number[]): number =>
    slingLegTension({ load, legs: count, angle });
  return {
    legPull: bounded(corners(inputs, pull)),
    eyeBolt: bounded(
      corners(inputs, (values) => {
        const [, count = 1, angle = 90] = values;
        return pull(values) / eyeBoltRating(count < 2 ? 0 : 90 - angle);
      }),
    ),
  };
}
