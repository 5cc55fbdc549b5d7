import type { Machine } from '../catalog.ts';
import { COMMON_PRACTICE, ends, GEOMETRY, known, type PlausibleRule, when } from './rule.ts';

/** Mass over the outline of a machine, kg/m³. */
const DENSITY = { least: 100, most: 1000 };
/** How much larger than it stands a machine is shipped at most, with its packing. */
const PACKED = 1.3;
/** Between phases, V. */
const VOLTS = { least: 90, most: 1000 };
const SIDES = ['width', 'depth', 'height'] as const;

/** How a machine stands in the shop. */
export const MACHINE_STANDING_RULES: readonly PlausibleRule<Machine>[] = [
  {
    id: 'table-in-footprint',
    reason: 'the table stands inside the machine',
    source: GEOMETRY,
    doubts: ({ footprint, table }, { say }) =>
      ([0, 1] as const).flatMap((side) =>
        when(known(footprint[side]) < known(table?.size[side]), () => ({
          path: ['footprint', side],
          found: `is ${say(known(footprint[side]), 'mm')}, and the table is ${say(known(table?.size[side]), 'mm')} that way`,
          expected: `a ${SIDES[side]} of more than the table`,
        })),
      ),
  },
  {
    id: 'nose-below-top',
    reason: 'the head goes on above the nose',
    source: GEOMETRY,
    doubts: ({ footprint, table, noseToTable, spindleToTable }, { say }) => {
      const [, over] = ends(spindleToTable ?? noseToTable);
      const top = known(table?.height) + over;
      return when(known(footprint[2]) < top, () => ({
        path: ['footprint', 2],
        found: `is ${say(known(footprint[2]), 'mm')}, and the spindle gets to ${say(top, 'mm')} above the floor`,
        expected: 'a height of more than that',
      }));
    },
  },
  {
    id: 'ships-as-it-stands',
    reason: 'what sticks out is taken off for the road, and packing adds little',
    source: COMMON_PRACTICE,
    doubts: ({ shipping, footprint }, { say }) => {
      const longest = Math.max(known(footprint[0]), known(footprint[1]));
      const shortest = Math.min(known(footprint[0]), known(footprint[1]));
      const limits = [longest, shortest, known(footprint[2])].map((side) => side * PACKED);
      const [one, other, height] = shipping.map(known);
      const sides = [Math.max(one ?? 0, other ?? 0), Math.min(one ?? 0, other ?? 0), height ?? 0];
      const wrong = sides.findIndex((side, at) => side > (limits[at] ?? 0));
      const stated = [longest, shortest, known(footprint[2])][wrong];
      return when(wrong >= 0 && stated !== undefined && !Number.isNaN(stated), () => ({
        path: ['shipping'],
        found: `has ${say(sides[wrong] ?? 0, 'mm')} where the machine stands on ${say(stated ?? 0, 'mm')}`,
        expected: 'about its footprint, or less',
      }));
    },
  },
  {
    id: 'machine-mass-for-size',
    reason: `a machine is iron in a mostly empty box, ${DENSITY.least} to ${DENSITY.most} kg a cubic meter of its outline`,
    source: COMMON_PRACTICE,
    doubts: ({ mass, footprint: [width, depth, height] }, { say }) => {
      const density = known(mass) / ((known(width) * known(depth) * known(height)) / 1e9);
      const light = density < DENSITY.least;
      return when(light || density > DENSITY.most, () => ({
        path: ['mass'],
        found: `is ${say(known(mass), 'kg')}, ${say(density, 'kg')} a cubic meter of its outline`,
        expected: `a ${light ? 'larger' : 'smaller'} mass`,
        perhaps: light && density * 1000 <= DENSITY.most * 10 ? `${known(mass)} t` : undefined,
      }));
    },
  },
  {
    id: 'supply-voltage',
    reason: 'machines are fed at low voltage, 90 to 1000 V',
    source: COMMON_PRACTICE,
    doubts: ({ power: { volts } }, { say }) =>
      when(known(volts) < VOLTS.least || known(volts) > VOLTS.most, () => ({
        path: ['power', 'volts'],
        found: `is ${say(known(volts), 'V')}`,
        expected: `between ${VOLTS.least} and ${VOLTS.most} V`,
      })),
  },
  {
    id: 'features-below-price',
    reason: 'features are options, not the machine',
    source: COMMON_PRACTICE,
    doubts: ({ features, price }, { say }) => {
      const sum = Object.values(features).reduce<number>(
        (total, each) => total + (typeof each === 'number' ? each : 0),
        0,
      );
      return when(sum > known(price), () => ({
        path: ['features'],
        found: `cost ${say(sum, 'money')} together, and the machine ${say(known(price), 'money')}`,
        expected: 'less than the price of the machine',
      }));
    },
  },
];
