import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers, Part, Uncertain } from '../../questions/answers.ts';
import { onGrid, type Seeded, seededBy } from '../exercises/seeded.ts';
import type { Lesson } from '../lessons/lesson.ts';
import type { ReadyLesson } from '../lessons/run-lesson.ts';
import { prepareLesson } from '../lessons/step-key.ts';

/** A number is moved by so much of itself at most. */
const FARTHEST = 0.15;
/** So often numbers are drawn until every step can be worked out. */
const DRAWS = 8;

/**
 * The same lesson with other numbers, the same for the same seed: sizes, depths, masses and cuts of its parts and the lengths of
 * the tools are moved by up to 15 %, in round steps. What its questions name stays. Null: of what was drawn no step-by-step way
 * was known.
 */
export function variantOf(lesson: Lesson, catalog: Catalog, seed: number): ReadyLesson | null {
  for (let turn = 0; turn < DRAWS; turn += 1) {
    const draw = seededBy(seed, lesson.title, String(turn));
    const ready = prepareLesson({ ...lesson, answers: moved(lesson, draw) }, catalog);
    if (ready.ok) return ready;
  }
  return null;
}

type Mover = (value: Uncertain, times?: number) => Uncertain;

function moved({ answers, steps }: Lesson, draw: Seeded): Answers {
  const named = new Set(steps.flatMap(({ ask, why }) => `${ask} ${why}`.match(/\d+(?:\.\d+)?/g) ?? []));
  const move: Mover = (value, times) => {
    const share = draw.whole(-100, 100) / 100;
    if (typeof value !== 'number' || value === 0 || named.has(String(value))) return value;
    const step = roundStep(value / 20);
    const to = value * (times ?? 1 + share * FARTHEST);
    return Math.max(step, onGrid(Math.round(to / step) * step));
  };
  const { shortest, longest, largestCutter } = answers.tools;
  return {
    ...answers,
    parts: answers.parts.map((part) => movedPart(part, move)),
    tools: { shortest: move(shortest), longest: move(longest), largestCutter },
  };
}

function movedPart(part: Part, move: Mover): Part {
  const { size, holding, cut, contourCut, diameter, length } = part;
  const sizes = [move(size[0]), move(size[1]), move(size[2])] as const;
  const round = [move(diameter), move(length)] as const;
  // it weighs as much more as it is larger
  const grown =
    part.shape === 'round'
      ? grownBy([diameter, diameter, length], [round[0], round[0], round[1]])
      : grownBy(size, sizes);
  return {
    ...part,
    size: sizes,
    diameter: round[0],
    length: round[1],
    mass: move(part.mass, grown),
    depthTop: move(part.depthTop),
    depthSide: move(part.depthSide),
    eccentricity: move(part.eccentricity),
    holding: {
      ...holding,
      diameter: move(holding.diameter),
      height: move(holding.height),
      mass: move(holding.mass),
    },
    cut: movedCut(cut, move),
    contourCut: movedCut(contourCut, move),
  };
}

/** Cutters come in sizes: diameter and teeth stay. */
const movedCut = (cut: Part['cut'], move: Mover): Part['cut'] =>
  typeof cut === 'object'
    ? { ...cut, ap: move(cut.ap), ae: move(cut.ae), fz: move(cut.fz), vc: move(cut.vc) }
    : cut;

const grownBy = (before: readonly Uncertain[], after: readonly Uncertain[]): number =>
  before.reduce<number>((times, value, index) => {
    const other = after[index];
    return typeof value === 'number' && typeof other === 'number' && value > 0
      ? (times * other) / value
      : times;
  }, 1);

/** The next step of 1, 2 or 5 below. Example: roundStep(6) → 5, roundStep(0.004) → 0.002. */
function roundStep(most: number): number {
  const tens = 10 ** Math.floor(Math.log10(most));
  const times = [5, 2, 1].find((each) => each * tens <= most * (1 + 1e-9)) ?? 1;
  return Number((times * tens).toPrecision(3));
}
