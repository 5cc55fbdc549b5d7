import type { Answers, Lifting, Uncertain } from '../../questions/answers.ts';
import type { Assumed } from '../../questions/assumptions.ts';
import { NOT_SURE, type NotSureKey } from '../../questions/ranges.ts';
import type { MeansCase, SiteCase } from '../judging/site-case.ts';
import { answered, known, type Value } from '../judging/value.ts';

/** What the shop says of its building, its supply and its means of lifting. */
export function siteCase({ shop }: Answers, assume: Assumed): SiteCase {
  const { power, air, doorway } = shop;
  return {
    owned: shop.machine,
    bay: [
      answered(shop.bay[0], 'shop.bay[0]', NOT_SURE['shop.bay']),
      answered(shop.bay[1], 'shop.bay[1]', NOT_SURE['shop.bay']),
    ],
    ceiling: read(shop.ceiling, 'shop.ceiling'),
    doorWidth: read(doorway.width, 'shop.doorway.width'),
    doorHeight: read(doorway.height, 'shop.doorway.height'),
    doorSill: read(shop.doorSill, 'shop.doorSill'),
    floorRating: read(shop.floorRating, 'shop.floorRating'),
    kVA: read(power.kVA, 'shop.power.kVA'),
    volts: read(power.volts, 'shop.power.volts'),
    phases: read(power.phases, 'shop.power.phases'),
    airFlow: read(air.flow, 'shop.air.flow'),
    airBar: read(air.bar, 'shop.air.bar'),
    silent: {
      floor: shop.floorRating === 'unknown',
      power: power.kVA === 'unknown',
      air: air.flow === 'unknown' || air.bar === 'unknown',
    },
    lifting: shop.lifting === 'unknown' ? null : shop.lifting.map((means) => meansCase(means, assume)),
  };
}

const read = (answer: Uncertain, path: NotSureKey): Value => answered(answer, path, NOT_SURE[path]);

function meansCase(means: Lifting, { handLift }: Assumed): MeansCase {
  if (means.by === 'hand') {
    const usually = (key: 'reach' | 'from' | 'lift'): Value =>
      means[key] === 'unknown'
        ? known(handLift[key], `assume.handLift.${key}`)
        : read(means[key], `shop.lifting.hand.${key}`);
    return {
      by: 'hand',
      people: read(means.people, 'shop.lifting.hand.people'),
      reach: usually('reach'),
      from: usually('from'),
      lift: usually('lift'),
      coupling: handLift.coupling,
    };
  }
  if (means.by === 'forklift')
    return {
      by: 'forklift',
      capacity: read(means.capacity, 'shop.lifting.forklift.capacity'),
      loadCenter: read(means.loadCenter, 'shop.lifting.forklift.loadCenter'),
    };
  return {
    by: 'hoist',
    capacity: read(means.capacity, 'shop.lifting.hoist.capacity'),
    rigging: read(means.rigging, 'shop.lifting.hoist.rigging'),
    legs: read(means.legs, 'shop.lifting.hoist.legs'),
    slingAngle: read(means.slingAngle, 'shop.lifting.hoist.slingAngle'),
    slingHeight: read(means.slingHeight, 'shop.lifting.hoist.slingHeight'),
    hookHeight: read(means.hookHeight, 'shop.lifting.hoist.hookHeight'),
  };
}
