import type { Catalog, Feature } from '../../catalog/catalog.ts';
import type { Answers, Part } from '../../questions/answers.ts';
import type { Candidate } from '../../rules/arranging/candidates.ts';
import type { Loose } from '../../rules/checks/example.ts';
import type { Need } from '../../rules/decision.ts';
import type { FeatureId } from '../../rules/features/ids.ts';
import { merged } from '../examples/merged.ts';
import { added, CALM, MOVING, part, twoAxes } from './bases.ts';
import type { Recipe } from './recipe.ts';

/** Answers and rows. */
export interface Shop {
  readonly answers: Answers;
  readonly rows: Catalog;
}

/** How the rule of a feature is brought to decide. Yes: one of `yes` is found. */
export interface FeatureRecipe extends Recipe {
  readonly yes: readonly Need[];
  /** what the line is: between a number and its limit, or between price and worth */
  readonly by: 'line' | 'price';
  /** where no number moves it over its line: the same shop with one thing otherwise, in which it says the opposite */
  readonly otherwise?: (shop: Shop) => Shop;
}

const required = { yes: ['required'], by: 'line', eitherSide: true } as const;
const paying = { yes: ['pays for itself'], by: 'price', eitherSide: true, line: 'number' } as const;
const thing = { ...required, moves: [], line: 'yes or no' } as const;

const priced =
  (feature: Feature) =>
  ({ machine }: Candidate): boolean =>
    typeof machine.row.features[feature] === 'number';
const there =
  (feature: Feature) =>
  ({ machine }: Candidate): boolean =>
    machine.row.features[feature] !== undefined;

const withPart = ({ answers, rows }: Shop, change: Loose<Part>): Shop => ({
  answers: { ...answers, parts: answers.parts.map((each) => merged(each, change)) },
  rows,
});

/** All drives that the axes take, or none of them. */
function drivesTurned({ answers, rows }: Shop): Shop {
  const machines = rows.machines.map((row) => {
    const { fitted } = row.axisDrives;
    const none = fitted === 0 || fitted === 'unknown';
    return { ...row, axisDrives: { fitted: none ? 2 : 0, offered: none ? 0 : 2, priceEach: 1000 } };
  });
  return { answers, rows: { ...rows, machines } };
}

/** How each feature is brought to decide. A new id does not compile without. */
export const FEATURE_RECIPES: Readonly<Record<FeatureId, FeatureRecipe>> = {
  axisDrives: {
    ...thing,
    bases: CALM,
    suits: (each, side) =>
      added(each) && (side === 'no') === each.machine.drivesFitted.low >= each.rotary.axes,
    otherwise: drivesTurned,
  },
  toolCenterPoint: {
    ...thing,
    bases: [part(MOVING), {}],
    suits: there('toolCenterPoint'),
    otherwise: (shop) =>
      withPart(shop, shop.answers.parts[0]?.motion === 'simultaneous' ? { motion: 'positional' } : MOVING),
  },
  rotatingWorkOffset: {
    ...paying,
    bases: CALM,
    moves: ['lots', 'shopRate'],
    suits: priced('rotatingWorkOffset'),
  },
  tiltedWorkPlane: {
    ...required,
    bases: [part({ eccentricity: 5 }), {}],
    moves: ['eccentricity'],
    suits: (each) => twoAxes(each) && there('tiltedWorkPlane')(each) && there('rotatingWorkOffset')(each),
    line: 'yes or no',
  },
  spindleProbe: {
    ...required,
    bases: CALM,
    moves: ['tolerance'],
    suits: priced('spindleProbe'),
    line: 'number',
  },
  toolSetter: { ...paying, bases: CALM, moves: ['lots', 'shopRate'], suits: priced('toolSetter') },
  lookAhead: {
    ...required,
    bases: [part(MOVING), part({ motion: 'surfaces' })],
    moves: ['contourFeed', 'chordError'],
    suits: (each) => there('lookAhead')(each) && there('toolCenterPoint')(each),
    line: 'number',
  },
  camPost: { ...thing, bases: CALM, suits: (each, side) => twoAxes(each) === (side === 'yes') },
  longHolders: {
    ...required,
    bases: [part({ lowestSideFeature: 5, depthSide: 50 }), part({ lowestSideFeature: 5, depthSide: 70 })],
    moves: ['longestTool', 'depthSide', 'fixtureDiameter'],
    line: 'rows',
  },
  throughSpindleCoolant: {
    ...required,
    bases: [2, 3, 4].map((diameter) => part({ drill: { diameter, feed: 0.05, offset: 2 } })),
    moves: ['depthSide'],
    line: 'number',
  },
  chipConveying: {
    ...required,
    yes: ['worth having'],
    bases: [2, 4, 8].map((cycleMinutes) =>
      part({ fill: 0.4, yearly: { setups: 1, setupMinutes: 10, handlingMinutes: 0.5, cycleMinutes } }),
    ),
    moves: ['fill', 'cycle'],
    line: 'number',
  },
  mistAndFire: {
    ...thing,
    bases: [part({ material: 'titanium' }), {}, part({ material: 'brass' })],
    otherwise: (shop) =>
      withPart(shop, { material: shop.answers.parts[0]?.material === 'titanium' ? 'brass' : 'titanium' }),
  },
};
