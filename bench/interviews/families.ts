import type { Part } from '../../src/questions/answers.ts';
import { blankPart } from '../../src/questions/blank-answers.ts';
import type { Chance } from './chance.ts';

/** A family of parts as a shop would answer for it, invented: one kind of work each. */
type Family = (chance: Chance, name: string) => Part;

const yearly = ({ between }: Chance, setups: number): Part['yearly'] => ({
  quantity: between(60, 1800, 20),
  lots: between(4, 30),
  setups,
  setupMinutes: between(20, 60, 5),
  cycleMinutes: between(4, 40),
  handlingMinutes: between(1, 4, 0.5),
});

/** A small block, cut from the top and its four sides. */
const smallBlock: Family = (chance, name) => ({
  ...blankPart(name),
  shape: 'block',
  size: [chance.between(40, 130, 5), chance.between(30, 100, 5), chance.between(20, 80, 5)],
  material: chance.pick(['aluminum-wrought', 'brass', 'steel-carbon', 'stainless-austenitic']),
  approaches: ['top', 'sides'],
  bottom: chance.happens(0.5),
  motion: 'positional',
  depthTop: chance.between(5, 30, 5),
  depthSide: chance.between(4, 20, 2),
  lowestSideFeature: chance.between(0, 15, 5),
  tolerance: chance.pick([0.05, 0.08, 0.1, 0.2]),
  holding: {
    by: 'fixture',
    diameter: chance.between(80, 160, 10),
    height: chance.between(30, 70, 5),
    mass: chance.between(2, 10),
  },
  cut: chance.pick(['light', 'medium', 'heavy']),
  yearly: yearly(chance, chance.between(3, 5)),
});

/** A turned body whose holes and flats lie around one axis. */
const turnedBody: Family = (chance, name) => ({
  ...blankPart(name),
  shape: 'round',
  diameter: chance.between(30, 130, 5),
  length: chance.between(30, 140, 5),
  stands: 'upright',
  material: chance.pick(['stainless-austenitic', 'steel-alloy', 'brass']),
  approaches: ['around'],
  bottom: false,
  motion: 'positional',
  depthTop: 0,
  depthSide: chance.between(5, 30, 5),
  lowestSideFeature: chance.between(10, 25, 5),
  tolerance: chance.pick([0.08, 0.1, 0.15]),
  holding: { by: 'chuck', diameter: 125, height: 65, mass: 7.5 },
  cut: chance.pick(['light', 'medium']),
  yearly: yearly(chance, chance.between(2, 4)),
});

/** A nozzle or valve seat with a hole on the slant. */
const slanted: Family = (chance, name) => ({
  ...turnedBody(chance, name),
  approaches: ['top', { slant: chance.between(15, 75, 5) }],
  depthTop: chance.between(5, 25, 5),
  lowestSideFeature: 0,
});

/** A bracket with a pocket that undercuts its side. */
const undercut: Family = (chance, name) => ({
  ...smallBlock(chance, name),
  approaches: ['top', 'sides', { undercut: chance.between(95, 115, 5) }],
  lowestSideFeature: chance.between(15, 30, 5),
});

/** A wheel cut with all axes moving. */
const wheel: Family = (chance, name) => ({
  ...blankPart(name),
  shape: 'round',
  diameter: chance.between(60, 180, 10),
  length: chance.between(25, 70, 5),
  stands: 'upright',
  material: chance.pick(['aluminum-wrought', 'titanium', 'stainless-austenitic']),
  approaches: ['top', { slant: chance.between(30, 60, 5) }],
  bottom: false,
  motion: 'simultaneous',
  depthTop: chance.between(10, 30, 5),
  depthSide: chance.between(10, 25, 5),
  lowestSideFeature: 0,
  tolerance: chance.pick([0.05, 0.1]),
  holding: {
    by: 'fixture',
    diameter: chance.between(50, 110, 10),
    height: chance.between(35, 60, 5),
    mass: chance.between(2, 5),
  },
  cut: chance.pick(['light', 'medium']),
  contourCut: 'light',
  contour: {
    feed: chance.between(800, 3000, 200),
    radius: chance.between(20, 80, 10),
    chordError: chance.pick([0.005, 0.01, 0.02]),
  },
  yearly: yearly(chance, chance.between(2, 4)),
});

/** A casting that asks for a large machine. */
const casting: Family = (chance, name) => ({
  ...smallBlock(chance, name),
  size: [chance.between(200, 460, 20), chance.between(160, 360, 20), chance.between(60, 200, 20)],
  material: chance.pick(['iron-gray', 'aluminum-cast', 'iron-ductile']),
  tolerance: chance.pick([0.1, 0.2]),
  holding: {
    by: 'fixture',
    diameter: chance.between(260, 480, 20),
    height: chance.between(40, 90, 10),
    mass: chance.between(15, 50),
  },
});

const NAMES = ['Cleat', 'Sluice valve', 'Winch drum', 'Lamp bracket', 'Pump seat', 'Rudder bush'] as const;

/** One to three families; the small ones are common, castings are seldom. */
export function familiesFor(chance: Chance): readonly Part[] {
  const count = chance.pick([1, 1, 2, 2, 3]);
  return Array.from({ length: count }, (_, index) => {
    const kind = chance.pick([
      smallBlock,
      smallBlock,
      turnedBody,
      slanted,
      slanted,
      undercut,
      wheel,
      casting,
    ]);
    const part = kind(chance, `${NAMES[index] ?? 'Part'} ${index + 1}`);
    return { ...part, must: index === 0 || chance.happens(0.3) };
  });
}
