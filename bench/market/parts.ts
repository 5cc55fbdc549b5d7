import type { CutDetail, Part } from '../../src/questions/answers.ts';
import { needsTilt } from '../../src/questions/parts/needs-tilt.ts';
import type { Chance } from '../interviews/chance.ts';
import { familiesFor } from '../interviews/families.ts';

/**
 * So many families, the kinds of the simulated shops, and what those seldom have: bars in a collet, work lying down, large
 * holes, parts off center, surfaces, cuts in numbers. The first must be made. Names are their own.
 */
export function partsFor(chance: Chance, count: number): readonly Part[] {
  const parts: Part[] = [];
  // changed as they come, so that fewer of them are the beginning of more
  while (parts.length < count) parts.push(...familiesFor(chance).map((part) => changed(part, chance)));
  return parts.slice(0, count).map((part, at) => ({
    ...part,
    name: `${part.name.replace(/ \d+$/, '')} ${at + 1}`,
    must: at === 0,
  }));
}

function changed(part: Part, chance: Chance): Part {
  const { between, pick, happens } = chance;
  return {
    ...part,
    ...(part.shape === 'round' && happens(0.6) ? asBar(part, chance) : {}),
    fill: pick([0.4, 0.6, 0.8, 1]),
    eccentricity: happens(0.25) ? between(5, 60, 5) : 0,
    cut: happens(0.4) ? inNumbers(chance) : part.cut,
    drill: happens(needsTilt(part) ? 0.5 : 0.2)
      ? { diameter: between(6, 25), feed: pick([0.1, 0.2, 0.3]), offset: between(0, 120, 10) }
      : null,
    ...(part.motion === 'positional' && happens(0.2) ? moving(chance) : {}),
  };
}

/** Some in a collet, some lying, all around their axis. */
function asBar(part: Part, { between, happens }: Chance): Partial<Part> {
  const thin = happens(0.6);
  return {
    approaches: happens(0.6) ? ['around'] : part.approaches,
    diameter: thin ? between(6, 44, 2) : part.diameter,
    length: between(30, 300, 10),
    stands: happens(0.7) ? 'upright' : 'lying',
    ...(thin ? { holding: { by: 'collet', diameter: 80, height: between(0, 50, 10), mass: 3 } } : {}),
  };
}

function inNumbers({ between, pick, happens }: Chance): CutDetail {
  const diameter = between(6, 60, 2);
  return {
    diameter,
    teeth: between(2, 6),
    ap: between(1, 25),
    ae: between(1, diameter / 2),
    fz: pick([0.03, 0.05, 0.08, 0.12]),
    vc: between(60, 420, 20),
    interrupted: happens(0.4),
  };
}

const moving = ({ between, pick }: Chance): Partial<Part> => ({
  motion: pick(['surfaces', 'simultaneous']),
  contourCut: pick(['light', 'medium', 'heavy']),
  contour: {
    feed: between(1000, 9000, 500),
    radius: between(5, 80, 5),
    chordError: pick([0.002, 0.005, 0.01]),
  },
});
