import { type Answers, MEASURES, type Part } from './answers.ts';

/** A part of which nothing is known but its name; what has a usual value has that. Example: blankPart('Hinge').fill → 1. */
export function blankPart(name: string): Part {
  return {
    name,
    shape: 'unknown',
    size: ['unknown', 'unknown', 'unknown'],
    diameter: 'unknown',
    length: 'unknown',
    stands: 'unknown',
    material: 'unknown',
    mass: 'unknown',
    fill: 1,
    approaches: 'unknown',
    bottom: 'unknown',
    motion: 'unknown',
    depthTop: 'unknown',
    depthSide: 'unknown',
    lowestSideFeature: 'unknown',
    tolerance: 'unknown',
    holding: { by: 'unknown', diameter: 'unknown', height: 'unknown', mass: 'unknown' },
    eccentricity: 0,
    cut: 'unknown',
    contourCut: 'unknown',
    drill: null,
    contour: { feed: 'unknown', radius: 'unknown', chordError: 'unknown' },
    yearly: {
      quantity: 'unknown',
      lots: 'unknown',
      setups: 'unknown',
      setupMinutes: 'unknown',
      cycleMinutes: 'unknown',
      handlingMinutes: 'unknown',
    },
    must: false,
  };
}

/** Answers that say nothing yet. */
export function blankAnswers(currency: string): Answers {
  return {
    format: 'fivesides-answers/1',
    units: 'mm',
    currency,
    parts: [],
    tools: { shortest: 'unknown', longest: 'unknown', largestCutter: 'unknown' },
    shop: {
      machine: 'unknown',
      bay: ['unknown', 'unknown'],
      ceiling: 'unknown',
      doorway: { width: 'unknown', height: 'unknown' },
      doorSill: 'unknown',
      floorRating: 'unknown',
      power: { kVA: 'unknown', volts: 'unknown', phases: 'unknown' },
      air: { flow: 'unknown', bar: 'unknown' },
      lifting: 'unknown',
    },
    work: {
      threeAxisShare: 'unknown',
      switchesPerWeek: 'unknown',
      visesWanted: 'unknown',
      vise: { width: 'unknown', length: 'unknown', height: 'unknown' },
      loading: 'unknown',
      swap: 'unknown',
    },
    money: {
      budget: 'unknown',
      shopRate: 'unknown',
      years: 'unknown',
      interest: 'unknown',
      rigging: 'unknown',
      training: 'unknown',
      yearlyCosts: 'unknown',
      residual: 'unknown',
      plates: 'unknown',
    },
    control: { cam: 'unknown' },
    matters: MEASURES,
    assume: {},
  };
}
