import type { Machine, Stated, StatedPair } from '../../catalog/catalog.ts';
import { anything, anythingFromZero, type Interval } from '../../quantities/interval.ts';
import type { MachineCase } from '../judging/case.ts';
import { stated, type Value } from '../judging/value.ts';

/** What a machine of the catalog offers. */
export function machineCase(row: Machine): MachineCase {
  const root = `machines[${row.id}]`;
  const read = (
    value: Stated,
    name: string,
    essential = false,
    possible: Interval = anythingFromZero,
  ): Value => stated(value, `${root}.${name}`, possible, essential);
  const { table, builtIn, spindleDrive: spindle, blocks, axisDrives } = row;
  const size = table?.size ?? (['unknown', 'unknown'] as const);
  const slots = table?.slots;
  const nose = builtIn === null ? row.noseToTable : builtIn.reach.noseToFace;
  const noseName = builtIn === null ? 'noseToTable' : 'builtIn.reach.noseToFace';
  return {
    key: row.id,
    row,
    builtIn: builtIn !== null,
    travelX: read(row.travel[0], 'travel[0]', true),
    travelY: read(row.travel[1], 'travel[1]', true),
    tableX: read(size[0], 'table.size[0]', true),
    tableY: read(size[1], 'table.size[1]', true),
    tableLoad: read(table?.load ?? 'unknown', 'table.load', true),
    slotCount: read(slots?.count ?? 'unknown', 'table.slots.count'),
    slotWidth: read(slots?.width ?? 'unknown', 'table.slots.width'),
    slotPitch: read(slots?.pitch ?? 'unknown', 'table.slots.pitch'),
    slotsAlong: slots?.along ?? 'unknown',
    noseBottom: read(endOf(nose, 0), `${noseName}[0]`, true, anything),
    noseTop: read(endOf(nose, 1), `${noseName}[1]`, true, anything),
    spindleBottom: read(endOf(row.spindleToTable ?? 'unknown', 0), 'spindleToTable[0]', true, anything),
    spindleTop: read(endOf(row.spindleToTable ?? 'unknown', 1), 'spindleToTable[1]', true, anything),
    ...reachOf(builtIn, read),
    throat: read(row.throat, 'throat'),
    noseDiameter: read(row.noseDiameter, 'noseDiameter'),
    power: read(spindle.power, 'spindleDrive.power'),
    torque: read(spindle.torque, 'spindleDrive.torque'),
    speed: read(spindle.speed, 'spindleDrive.speed'),
    positioning: read(row.positioning, 'positioning'),
    drivesFitted: read(axisDrives.fitted, 'axisDrives.fitted'),
    drivesOffered: read(axisDrives.offered, 'axisDrives.offered'),
    blocks: read(blocks.standard, 'blocks.standard'),
    blocksLookAhead: read(blocks.lookAhead, 'blocks.lookAhead'),
    blocksAhead: read(blocks.ahead, 'blocks.ahead'),
    blocksAheadLookAhead: read(blocks.aheadWithLookAhead, 'blocks.aheadWithLookAhead'),
    acceleration: read(row.acceleration, 'acceleration'),
    ...standingOf(row, read),
  };
}

/** What it asks of the building that it stands in. */
function standingOf({ table, footprint, service, shipping, power, air, mass }: Machine, read: Read) {
  return {
    tableHeight: read(table?.height ?? 'unknown', 'table.height'),
    footprintX: read(footprint[0], 'footprint[0]'),
    footprintY: read(footprint[1], 'footprint[1]'),
    standsHigh: read(footprint[2], 'footprint[2]'),
    serviceLeft: read(service.left, 'service.left'),
    serviceRight: read(service.right, 'service.right'),
    serviceFront: read(service.front, 'service.front'),
    serviceRear: read(service.rear, 'service.rear'),
    shipsLong: read(shipping[0], 'shipping[0]'),
    shipsWide: read(shipping[1], 'shipping[1]'),
    shipsHigh: read(shipping[2], 'shipping[2]'),
    mass: read(mass, 'mass'),
    kVA: read(power.kVA, 'power.kVA'),
    volts: read(power.volts, 'power.volts'),
    phases: read(power.phases, 'power.phases', false, { low: 1, high: 3 }),
    airFlow: read(air.flow, 'air.flow'),
    airBar: read(air.bar, 'air.bar'),
  };
}

type Read = (value: Stated, name: string, essential?: boolean, possible?: Interval) => Value;
type Reach = Pick<MachineCase, 'reachLeft' | 'reachRight' | 'reachFront' | 'reachRear'>;

/** Travel about the center of a built-in table, each side as a distance. */
function reachOf(builtIn: Machine['builtIn'], read: Read): Reach {
  const x: StatedPair = builtIn?.reach.x ?? 'unknown';
  const y: StatedPair = builtIn?.reach.y ?? 'unknown';
  const away = (value: Stated): Stated => (value === 'unknown' ? value : -value);
  return {
    reachLeft: read(away(endOf(x, 0)), 'builtIn.reach.x[0]', true, anything),
    reachRight: read(endOf(x, 1), 'builtIn.reach.x[1]', true, anything),
    reachFront: read(away(endOf(y, 0)), 'builtIn.reach.y[0]', true, anything),
    reachRear: read(endOf(y, 1), 'builtIn.reach.y[1]', true, anything),
  };
}

const endOf = (pair: StatedPair, end: 0 | 1): Stated => (pair === 'unknown' ? pair : pair[end]);
