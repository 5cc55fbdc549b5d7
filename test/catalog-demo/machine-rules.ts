import type { Machine } from '../../src/catalog/catalog.ts';
import { tSlotOfWidth } from '../../src/mechanics/building/t-slots.ts';
import { isLevel, LEVEL_SPINDLE } from './level-spindle-rules.ts';
import { COMMON_PRACTICE, differs, known, pair, type Rule } from './rule.ts';

/** Greatest and least diameter of a spindle nose, mm, by the size in the name of the taper. */
const NOSES: readonly (readonly [taper: RegExp, low: number, high: number])[] = [
  [/^(ISO |BT|CAT)30$/, 50, 80],
  [/^((ISO |BT|CAT)40|HSK-A63)$/, 75, 110],
  [/^((ISO |BT|CAT)50|HSK-A100)$/, 110, 150],
];
const noseOf = (row: Machine) => NOSES.find(([taper]) => taper.test(row.spindleDrive.taper));

const width = (value: Parameters<typeof pair>[0]): number => pair(value)[1] - pair(value)[0];
const noseTravel = (row: Machine): number => width(row.builtIn?.reach.noseToFace ?? row.noseToTable);
const travel = (row: Machine, axis: 0 | 1 | 2): number => known(row.travel[axis]);
const table = (row: Machine, axis: 0 | 1): number => known(row.table?.size[axis] ?? null);
const size = (row: Machine, of: 'footprint' | 'shipping', axis: 0 | 1 | 2): number => known(row[of][axis]);
const cubicMeters = (row: Machine): number =>
  (size(row, 'footprint', 0) * size(row, 'footprint', 1) * size(row, 'footprint', 2)) / 1e9;
const withTable = (row: Machine, change: Partial<NonNullable<Machine['table']>>): Machine => ({
  ...row,
  table: row.table === null ? null : { ...row.table, ...change },
});

/** Travel, table and room. */
const ROOM: readonly Rule<Machine>[] = [
  {
    says: 'the nose travels as far as the Z axis',
    reason: 'nose to table at the top less the same at the bottom is the travel',
    source: 'geometry',
    breaks: (row) => differs(travel(row, 2), noseTravel(row), 1e-9),
    of: 'alder',
    spoil: (row) => ({ ...row, noseToTable: [100, 700] }),
  },
  {
    says: 'the reach over a built-in table is the travel in X and Y',
    reason: 'both are the same movement, seen from the table',
    source: 'geometry',
    breaks: ({ builtIn, travel: [x, y] }) =>
      builtIn !== null &&
      (differs(known(x), width(builtIn.reach.x), 1e-9) || differs(known(y), width(builtIn.reach.y), 1e-9)),
    of: 'damson',
    spoil: (row) => ({ ...row, travel: [800, 520, 460] }),
  },
  {
    says: 'the table is longer than the X travel, and no more than 1.7 times',
    reason: 'its ends carry what is not being cut',
    source: COMMON_PRACTICE,
    breaks: (row) => table(row, 0) <= travel(row, 0) || table(row, 0) > 1.7 * travel(row, 0),
    of: 'hornbeam',
    spoil: (row) => withTable(row, { size: [800, 540] }),
  },
  {
    says: 'the table is about as wide as the travel over it: Y, or Z of a level spindle',
    reason: 'what lies outside of it is never reached',
    source: COMMON_PRACTICE,
    breaks: (row) => differs(travel(row, isLevel(row) ? 2 : 1), table(row, 1), 0.2),
    of: 'medlar',
    spoil: (row) => withTable(row, { size: [840, 700] }),
  },
  {
    says: 'the throat is at least the Y travel',
    reason: 'at the end of the travel the far edge of the table stands under the head',
    source: COMMON_PRACTICE,
    breaks: (row) => known(row.throat) < travel(row, 1),
    of: 'whitebeam',
    spoil: (row) => ({ ...row, throat: 400 }),
  },
  {
    says: 'the table stands 750 to 1050 mm above the floor',
    reason: 'a person loads it',
    source: COMMON_PRACTICE,
    breaks: (row) => known(row.table?.height ?? null) < 750 || known(row.table?.height ?? null) > 1050,
    of: 'rowan',
    spoil: (row) => withTable(row, { height: 84 }),
  },
  {
    says: 'the table carries between 600 and 2000 kg a square meter',
    reason: 'small tables carry less for their size',
    source: COMMON_PRACTICE,
    breaks: (row) => {
      const load = known(row.table?.load ?? null) / ((table(row, 0) * table(row, 1)) / 1e6);
      return load < 600 || load > 2000;
    },
    of: 'sallow',
    spoil: (row) => withTable(row, { load: 1500 }),
  },
  {
    says: 'the pitch of the slots goes with their width',
    reason: 'slots narrower than their pitch asks for leave the bolts too weak, wider ones the table',
    source: 'ISO 299 widths and pitches',
    breaks: (row) => {
      const slots = row.builtIn?.slots ?? row.table?.slots;
      return (
        slots === undefined || tSlotOfWidth(known(slots.width))?.pitches.includes(known(slots.pitch)) !== true
      );
    },
    of: 'osier',
    spoil: (row) =>
      withTable(row, {
        slots: { count: 5, width: 14, pitch: 70, center: true, along: 'x' },
      }),
  },
  {
    says: 'all slots lie in the table, one in the middle where their number is odd',
    reason: 'slots are laid out from the middle',
    source: COMMON_PRACTICE,
    breaks: (row) => {
      if (row.table === null) return false;
      const { count, width: slot, pitch, center } = row.table.slots;
      return (
        (known(count) - 1) * known(pitch) + known(slot) > table(row, 1) || center !== (known(count) % 2 === 1)
      );
    },
    of: 'larch',
    spoil: (row) =>
      withTable(row, {
        slots: { count: 8, width: 18, pitch: 80, center: false, along: 'x' },
      }),
  },
  {
    says: 'an addition gives no more than half of the Z travel, and only a spacer makes the machine higher',
    reason: 'it moves the travel, it adds none; a lowered table stays inside',
    source: COMMON_PRACTICE,
    breaks: (row) =>
      row.clearance.some(
        (each) =>
          each.adds > travel(row, 2) / 2 || each.height !== (each.kind === 'column-spacer' ? each.adds : 0),
      ),
    of: 'medlar',
    spoil: (row) => ({
      ...row,
      clearance: [{ kind: 'lowered-table', adds: 75, price: 3400, height: 75 }],
    }),
  },
];

/** Spindle, control and drives. */
const SPINDLE: readonly Rule<Machine>[] = [
  {
    says: 'power and torque meet between 400 and 3000 rpm, below half of the greatest speed',
    reason: 'power = torque × speed: below that the torque is rated, above it the power',
    source: 'P = M·n/9549',
    breaks: ({ spindleDrive }) => {
      const base = (9549 * known(spindleDrive.power)) / known(spindleDrive.torque);
      return base < 400 || base > Math.min(3000, known(spindleDrive.speed) / 2);
    },
    of: 'quince',
    spoil: (row) => ({
      ...row,
      spindleDrive: { ...row.spindleDrive, torque: 6 },
    }),
  },
  {
    says: 'the taper is an open standard and the nose has its size',
    reason: 'holders are bought from anybody',
    source: `steep tapers 30, 40, 50 and hollow shanks 63, 100 are standards; the diameters are ${COMMON_PRACTICE}`,
    breaks: (row) => {
      const nose = noseOf(row);
      return nose === undefined || known(row.noseDiameter) < nose[1] || known(row.noseDiameter) > nose[2];
    },
    of: 'holm-oak',
    spoil: (row) => ({ ...row, noseDiameter: 60 }),
  },
  {
    says: 'the connected load is at least 1.2 times the spindle power',
    reason: 'axes, coolant and control draw as well',
    source: COMMON_PRACTICE,
    breaks: (row) => known(row.power.kVA) < 1.2 * known(row.spindleDrive.power),
    of: 'bullace',
    spoil: (row) => ({ ...row, power: { ...row.power, kVA: 20 } }),
  },
  {
    says: 'it positions to between 0.003 and 0.015 mm',
    reason: 'more is worn out, less is a laboratory',
    source: COMMON_PRACTICE,
    breaks: (row) => known(row.positioning) < 0.003 || known(row.positioning) > 0.015,
    of: 'blackthorn',
    spoil: (row) => ({ ...row, positioning: 0.0003 }),
  },
  {
    says: 'a machine that comes with a rotary comes with both of its drives',
    reason: 'it could not be used otherwise',
    source: COMMON_PRACTICE,
    breaks: (row) => row.kind !== 'mill' && row.axisDrives.fitted !== 2,
    of: 'buckthorn',
    spoil: (row) => ({ ...row, axisDrives: { ...row.axisDrives, fitted: 0 } }),
  },
  {
    says: 'look-ahead reads no fewer blocks than the plain control',
    reason: 'it is bought for that',
    source: COMMON_PRACTICE,
    breaks: ({ blocks }) =>
      known(blocks.lookAhead) < known(blocks.standard) ||
      known(blocks.aheadWithLookAhead) < known(blocks.ahead),
    of: 'hackberry',
    spoil: (row) => ({ ...row, blocks: { ...row.blocks, lookAhead: 100 } }),
  },
  {
    says: 'all features together cost less than half of the machine',
    reason: 'they are options, not the machine',
    source: COMMON_PRACTICE,
    breaks: (row) => {
      const prices = Object.values(row.features).map((price) => (price === 'standard' ? 0 : known(price)));
      return prices.reduce((sum, each) => sum + each, 0) > 0.5 * known(row.price);
    },
    of: 'sallow',
    spoil: (row) => ({
      ...row,
      features: { ...row.features, toolCenterPoint: 19500 },
    }),
  },
];

/** In the shop. */
const STANDING: readonly Rule<Machine>[] = [
  {
    says: 'the footprint is at least as wide as the table and its travel',
    reason: 'the table moves to both ends inside the enclosure',
    source: COMMON_PRACTICE,
    breaks: (row) => size(row, 'footprint', 0) < table(row, 0) + travel(row, 0),
    of: 'alder',
    spoil: (row) => ({ ...row, footprint: [1500, 2200, 2700] }),
  },
  {
    says: 'the footprint is deeper than throat and Y travel together',
    reason: 'the column stands behind',
    source: COMMON_PRACTICE,
    breaks: (row) => size(row, 'footprint', 1) < known(row.throat) + travel(row, 1),
    of: 'spindlewood',
    spoil: (row) => ({ ...row, footprint: [3600, 2000, 3600] }),
  },
  {
    says: 'it is at least 400 mm higher than the nose, or a level spindle, at the top of its travel',
    reason: 'the head goes on above the nose',
    source: COMMON_PRACTICE,
    breaks: (row) =>
      size(row, 'footprint', 2) <
      known(row.table?.height ?? null) + pair(row.spindleToTable ?? row.noseToTable)[1] + 400,
    of: 'medlar',
    spoil: (row) => ({ ...row, footprint: [2200, 2150, 1700] }),
  },
  {
    says: 'it ships no larger than it stands',
    reason: 'what sticks out is taken off for the road',
    source: COMMON_PRACTICE,
    breaks: (row) =>
      ([0, 1, 2] as const).some((axis) => size(row, 'shipping', axis) > size(row, 'footprint', axis)),
    of: 'quince',
    spoil: (row) => ({ ...row, shipping: [1700, 2500, 2900] }),
  },
  {
    says: 'it weighs between 150 and 600 kg a cubic meter of its outline',
    reason: 'iron in a mostly empty box',
    source: COMMON_PRACTICE,
    breaks: (row) => {
      const density = known(row.mass) / cubicMeters(row);
      return density < 150 || density > 600;
    },
    of: 'blackthorn',
    spoil: (row) => ({ ...row, mass: 900 }),
  },
  {
    says: 'the rotary that comes with a convertible fits and costs less than the machine',
    reason: 'it is sold as one',
    source: COMMON_PRACTICE,
    breaks: (row, { rotaries }) => {
      if (row.rotaryIncluded === null) return false;
      const rotary = rotaries.find(({ id }) => id === row.rotaryIncluded);
      if (rotary === undefined || row.table === null) return true;
      return (
        known(rotary.mass) + known(rotary.payload.level) > known(row.table.load) ||
        known(rotary.base.along) > table(row, 0) ||
        known(rotary.base.across) > table(row, 1) ||
        known(rotary.price) >= known(row.price)
      );
    },
    of: 'larch',
    spoil: (row) => ({ ...row, rotaryIncluded: 'bittern' }),
  },
];

export const MACHINE_RULES: readonly Rule<Machine>[] = [...ROOM, ...SPINDLE, ...STANDING, ...LEVEL_SPINDLE];
