import type { Candidate } from '../../rules/arranging/candidates.ts';
import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import { added, CALM, oneAxis, part, STACKED, STACKED_HIGH, twoAxes } from './bases.ts';
import type { Base } from './recipe.ts';
import { momentBeforePayload } from './recipes.ts';
import type { RuleRecipe } from './rule-recipe.ts';

const AROUND = { approaches: ['around'], depthTop: 0 } as const;
const FIVE_SIDES = { approaches: ['top', 'sides'], depthTop: 5 } as const;
const UNDERCUT = { approaches: ['top', { undercut: 95 }] } as const;
const SLANT = { approaches: ['top', { slant: 45 }] } as const;
/** Steel cut so wide and deep that few brakes hold it. */
const HARD_CUT = {
  material: 'steel-alloy',
  cut: { diameter: 63, teeth: 5, ap: 20, ae: 45, fz: 0.3, vc: 120 },
} as const;
const quantity = (each: number) => ({ yearly: { quantity: each } });

const ofClass =
  (...classes: readonly string[]) =>
  ({ rotary }: Candidate): boolean =>
    classes.includes(rotary.class);

/** A second part, of which a drawn quantity is made. */
const besides = (change: NonNullable<Base['part']>, first: Base = {}): readonly Base[] =>
  [60, 90, 120].map((each) => ({ ...first, others: [{ ...change, ...quantity(each) }] }));
/** The first part is the smaller share of the hours, the second the bulk. */
const bulk = (first: NonNullable<Base['part']> = {}): readonly Base[] =>
  [400, 500, 600].map((each) => ({ part: { ...first, ...quantity(100) }, others: [quantity(each)] }));

const finding = { decides: 'finding', eitherSide: true, line: 'number' } as const;
const voice = { decides: 'voice', eitherSide: true, line: 'number' } as const;

const momentOf = { bases: [...STACKED, ...STACKED_HIGH], moves: ['fixtureMass'] } as const;

/** How each rule of the class is brought to decide. A new id does not compile without. */
export const CLASS_RECIPES: Readonly<Record<ClassRuleId, RuleRecipe>> = {
  'sides-tilt': { ...finding, bases: besides(FIVE_SIDES), moves: ['quantity'], suits: oneAxis },
  'sides-must-tilt': {
    ...finding,
    bases: [
      { others: [{ ...FIVE_SIDES, ...quantity(60), must: true }] },
      { part: { must: true }, others: [{ ...FIVE_SIDES, ...quantity(60), must: false }] },
    ],
    moves: [],
    suits: oneAxis,
    line: 'yes or no',
  },
  'sides-some-tilt': { ...finding, bases: besides(FIVE_SIDES), moves: ['quantity'], suits: oneAxis },
  'sides-around': { ...voice, bases: besides(FIVE_SIDES), moves: ['quantity'], suits: oneAxis },
  'tilt-used': { ...voice, bases: besides(FIVE_SIDES, part(AROUND)), moves: ['quantity'], suits: twoAxes },
  'tilt-idle': { ...finding, bases: besides(FIVE_SIDES, part(AROUND)), moves: ['quantity'], suits: twoAxes },
  'tilt-beyond': {
    ...finding,
    bases: [part(UNDERCUT), part(SLANT)],
    moves: ['undercut', 'slant'],
    suits: twoAxes,
    line: 'rows',
  },
  'tilt-short': {
    ...finding,
    bases: [...bulk(UNDERCUT), ...bulk(SLANT)].map(fiveSidedOthers),
    moves: ['undercut', 'slant'],
    suits: twoAxes,
    line: 'rows',
  },
  'tilt-reaches': {
    ...voice,
    bases: [part(UNDERCUT), part(SLANT)],
    moves: ['undercut', 'slant'],
    suits: twoAxes,
    line: 'rows',
  },
  'swing-beyond': { ...finding, bases: [...CALM, ...besides({})], moves: ['fixtureDiameter'] },
  'swing-short': { ...finding, bases: bulk(), moves: ['fixtureDiameter'] },
  'swing-holds': { ...voice, bases: bulk(), moves: ['fixtureDiameter'] },
  'swing-oversized': {
    ...voice,
    bases: [...CALM, ...besides({})],
    moves: ['fixtureDiameter', 'length', 'diameter'],
  },
  'mass-beyond': { ...finding, bases: [...CALM, ...besides({})], moves: ['fixtureMass'] },
  'mass-short': { ...finding, onYes: 'voice', bases: bulk(), moves: ['fixtureMass'] },
  'mass-holds': { ...voice, bases: bulk(), moves: ['fixtureMass'] },
  'moment-short': {
    ...finding,
    ...momentOf,
    // where it speaks and were silent, the rule of strength would speak
    onYes: 'voice',
    // elsewhere the payload gives way first, even with a stack as high as goes round
    suits: ({ rotary }, side, level) =>
      rotary.axes === 2 &&
      ((side === 'no' && level === 1) || momentBeforePayload(rotary, side === 'no' ? 1 : 1.05)),
    line: 'rows',
  },
  'moment-holds': { ...voice, ...momentOf, suits: twoAxes },
  'strength-beyond': { ...finding, bases: besides(HARD_CUT), moves: ['quantity'] },
  'strength-short': { ...finding, bases: besides(HARD_CUT), moves: ['quantity'] },
  'moving-stiff': {
    ...voice,
    bases: besides({ motion: 'simultaneous' }),
    moves: ['quantity'],
    suits: ofClass('trunnion', 'built-in'),
  },
  'moving-one-support': {
    ...voice,
    bases: besides({ motion: 'simultaneous' }),
    moves: ['quantity'],
    suits: ofClass('single-support'),
  },
  'moving-indexed': {
    ...voice,
    bases: besides({ motion: 'simultaneous' }),
    moves: ['quantity'],
    suits: oneAxis,
  },
  positional: {
    ...voice,
    bases: besides({ motion: 'simultaneous' }),
    moves: ['quantity'],
    suits: ofClass('collet-indexer', 'single-axis', 'single-support'),
  },
  'bar-fits': {
    ...voice,
    bases: besides({ holding: { by: 'fixture' } }),
    moves: ['quantity'],
    suits: ofClass('collet-indexer'),
  },
  'bar-little': {
    ...finding,
    // where it speaks, what is no bar is not held, and so nothing passes
    onYes: 'voice',
    bases: besides({ holding: { by: 'fixture' } }),
    moves: ['quantity'],
    suits: ofClass('collet-indexer'),
  },
  'nose-takes-chucks': {
    ...voice,
    bases: besides({ holding: { by: 'chuck' } }),
    moves: ['quantity'],
    suits: (each) => added(each) && hasNose(each),
  },
  'nose-missing': {
    ...voice,
    bases: besides({ holding: { by: 'chuck' } }),
    moves: ['quantity'],
    suits: (each) => added(each) && !hasNose(each),
  },
  'spread-wide-open': {
    ...voice,
    bases: besides({}),
    moves: ['fixtureDiameter'],
    suits: ofClass('single-support'),
  },
  'spread-wide-closed': {
    ...voice,
    bases: besides({}),
    moves: ['fixtureDiameter'],
    suits: ofClass('collet-indexer', 'trunnion'),
  },
  'spread-narrow': {
    ...voice,
    bases: besides({}),
    moves: ['fixtureDiameter'],
    suits: ofClass('collet-indexer', 'trunnion'),
  },
  'three-axis-often-light': {
    ...voice,
    bases: CALM,
    moves: ['threeAxisShare'],
    suits: ofClass('collet-indexer', 'single-axis', 'single-support'),
  },
  'three-axis-often-heavy': {
    ...voice,
    bases: CALM,
    moves: ['threeAxisShare'],
    suits: ofClass('trunnion', 'built-in'),
  },
  'three-axis-seldom': {
    ...voice,
    bases: CALM,
    moves: ['threeAxisShare'],
    suits: ofClass('trunnion', 'built-in'),
  },
  'vises-fit': { ...voice, bases: wantingVises(), moves: ['visesWanted'], suits: added, line: 'rows' },
  'vises-missing': { ...voice, bases: wantingVises(), moves: ['visesWanted'], suits: added, line: 'rows' },
  'lifts-off': { ...voice, bases: CALM, moves: ['hoistCapacity'], suits: added },
  'stays-on': { ...voice, bases: CALM, moves: ['hoistCapacity'], suits: added },
  'never-lifted': {
    ...voice,
    bases: [0, 0, 1, 2, 4].map((switchesPerWeek) => ({ work: { switchesPerWeek } })),
    moves: [],
    suits: ofClass('built-in'),
    line: 'yes or no',
  },
  'price-over': { ...finding, bases: CALM, moves: ['budget'] },
  'catalog-none': {
    ...finding,
    bases: CALM,
    moves: [],
    suits: added,
    line: 'yes or no',
    ofClass: (drawn, side) => (side === 'no' ? drawn : drawn === 'trunnion' ? 'single-support' : 'trunnion'),
  },
  // where none passes the kind does not suit anyway
  'none-passes': {
    ...finding,
    onYes: 'voice',
    bases: CALM,
    moves: ['cuttingSpeed', 'supply', 'ceiling'],
    line: 'yes or no',
  },
  'some-pass': { ...voice, bases: CALM, moves: ['cuttingSpeed', 'supply', 'ceiling'], line: 'yes or no' },
};

function wantingVises(): readonly Base[] {
  return [1, 2, 3].map((visesWanted) => ({ work: { visesWanted } }));
}

function hasNose({ rotary: { row } }: Candidate): boolean {
  return row !== null && row.nose !== 'none';
}

/** The bulk is cut from five sides, whatever the first part is cut from. */
function fiveSidedOthers(base: Base): Base {
  return { ...base, others: (base.others ?? []).map((each) => ({ ...each, ...FIVE_SIDES })) };
}
