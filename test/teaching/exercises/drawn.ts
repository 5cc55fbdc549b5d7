import { expect } from 'vitest';
import type { Answers } from '../../../src/questions/answers.ts';
import { ASSUMPTIONS } from '../../../src/questions/assumptions.ts';
import { NOT_SURE } from '../../../src/questions/ranges.ts';
import { CHECK_IDS, type CheckId } from '../../../src/rules/checks/ids.ts';
import { type Spoken, spokenOf } from '../../../src/rules/classes/turned.ts';
import type { FeatureId } from '../../../src/rules/features/ids.ts';
import { keysOf, numberAt } from '../../../src/rules/flips/value-at.ts';
import { passes } from '../../../src/rules/judging/outcome.ts';
import { judgedAlone, standingOf } from '../../../src/rules/standing.ts';
import { passesTurned } from '../../../src/rules/weighing/turned.ts';
import { CLASS_RECIPES } from '../../../src/teaching/exercises/class-recipes.ts';
import { DRAWN_ANSWERS } from '../../../src/teaching/exercises/drawn-answers.ts';
import type { Exercise } from '../../../src/teaching/exercises/exercise.ts';
import { FEATURE_RECIPES, type Shop } from '../../../src/teaching/exercises/feature-recipes.ts';
import { makeExercise } from '../../../src/teaching/exercises/make-exercise.ts';
import { probedFeature } from '../../../src/teaching/exercises/probe-feature.ts';
import { BANDS, type Level, lineOf } from '../../../src/teaching/exercises/recipe.ts';
import { RECIPES } from '../../../src/teaching/exercises/recipes.ts';
import { FULL_POINTS, LESSON_START, runLesson, scoreOf } from '../../../src/teaching/lessons/run-lesson.ts';
import { prepareLesson } from '../../../src/teaching/lessons/step-key.ts';
import { classGround } from '../../../src/teaching/rules/rule-ground.ts';
import { demoCatalog } from '../../catalog-demo/demo.ts';
import { leaksIn, type Papers, papersOf, ungainlyIn, unsolvedIn } from '../worksheets/papers.ts';
import { expectOddAnswersHandled } from './odd-answers.ts';
import { type Found, note, wasSound } from './run-log.ts';

const catalog = demoCatalog();

/** Of each check at each level; EXERCISES=8 makes more than a thousand of them. */
const SEEDS = Array.from({ length: Number(process.env.EXERCISES ?? 1) }, (_, seed) => seed);

/** A share of all checks, so that several files run beside each other. */
export const ofShare = <Id>(all: readonly Id[], share: number, of: number): readonly Id[] =>
  all.filter((_, index) => index % of === share);

export const checksOfShare = (share: number, of: number) => ofShare(CHECK_IDS, share, of);

/** An exercise on the demo catalog; throws where there is none. */
export function drawn(about: string, seed: number, level: Level): Exercise {
  const made = makeExercise(about, { seed, level, catalog });
  if (!made.ok) throw new Error(made.why);
  return made.exercise;
}

/** Exercises about one thing at a level, one for each seed, each sound; what was found so in an earlier part of the run is left out. */
export function expectAllSound(about: string, level: Level): void {
  const wrong = SEEDS.filter((seed) => !wasSound({ about, seed, level })).flatMap((seed) => {
    const found = foundOf(() => drawn(about, seed, level));
    note({ about, seed, level }, found);
    return Object.entries(found).flatMap(([what, why]) =>
      why === '' ? [] : [`seed ${seed}, ${what}: ${why}`],
    );
  });
  expect(wrong).toEqual([]);
}

/** All that must hold of an exercise. */
export function expectSound(exercise: Exercise): void {
  for (const each of Object.values(EXPECTED)) each(exercise);
}

/** Of each thing that must hold, what is wrong with it. */
function foundOf(draw: () => Exercise): Found {
  try {
    const exercise = draw();
    const tried = Object.entries(EXPECTED).map(([what, expected]) => [
      what,
      failing(() => expected(exercise)),
    ]);
    return { drawn: '', ...Object.fromEntries(tried) };
  } catch (fault) {
    return { drawn: String(fault) };
  }
}

function failing(act: () => void): string {
  try {
    act();
    return '';
  } catch (fault) {
    return String(fault);
  }
}

const laidOut = new WeakMap<Exercise, Papers>();

function papersOfExercise(exercise: Exercise): Papers {
  const papers = laidOut.get(exercise) ?? papersFor(exercise);
  laidOut.set(exercise, papers);
  return papers;
}

function papersFor({ lesson, catalog: rows, about, seed, level }: Exercise): Papers {
  const ready = prepareLesson(lesson, rows);
  if (!ready.ok) throw new Error(ready.faults.join('\n'));
  return papersOf(ready, { name: `${about}, level ${level}`, seed, units: seed % 2 === 0 ? 'mm' : 'inch' });
}

/** What must hold of an exercise: as a lesson, and as the sheet that is handed out. */
const EXPECTED: Readonly<Record<string, (exercise: Exercise) => void>> = {
  decisive: expectDecisive,
  'in range': expectInRange,
  'gone through': expectSolvable,
  'solved from its sheet': (exercise) => expect(unsolvedIn(papersOfExercise(exercise)).join('; ')).toBe(''),
  'tells nothing': (exercise) => expect(leaksIn(papersOfExercise(exercise)).join('; ')).toBe(''),
  papers: (exercise) => expect(ungainlyIn(papersOfExercise(exercise)).join('; ')).toBe(''),
};

function expectDecisive(exercise: Exercise): void {
  const { decides } = exercise;
  if (decides.rule === 'check') expectCheckDecides(decides.id, exercise);
  else if (decides.rule === 'class rule') expectRuleDecides(decides, exercise);
  else expectFeatureDecides(decides.id, exercise);
}

function expectCheckDecides(check: CheckId, exercise: Exercise): void {
  const { lesson, side, level, share } = exercise;
  const judged = judgedAlone(lesson.answers, exercise.catalog, lesson.on);
  if (judged === null) throw new Error(`no arrangement ${lesson.on}`);
  // it decides: what passes fails with its verdict turned, and the other way round
  const turned = passesTurned(judged, check, ASSUMPTIONS.leastCoverage.value);
  expect([judged.passes, turned]).toEqual(side === 'yes' ? ['yes', 'no'] : ['no', 'yes']);
  const outcomes = [...judged.own, ...judged.families.flatMap((each) => each.outcomes)];
  for (const each of outcomes) if (each.check.id !== check) expect(passes(each.verdict)).toBe(true);
  if (lineOf(RECIPES[check], side) === 'number') expectInBand(share, level);
}

function expectInBand(share: number | null, level: Level): void {
  const [least, most] = BANDS[level];
  expect(share).toBeGreaterThanOrEqual(least);
  expect(share).toBeLessThanOrEqual(most);
}

/** With one number over the line, or one thing otherwise, the engine finds another need. */
function expectFeatureDecides(
  id: FeatureId,
  { lesson: { answers, on }, catalog: rows, side, level, share, across }: Exercise,
): void {
  const recipe = FEATURE_RECIPES[id];
  const needOn = (shop: Shop) => probedFeature(id, shop, on, recipe)?.need.need ?? 'open';
  const isYes = (need: string): boolean => recipe.yes.some((each) => each === need);
  const need = needOn({ answers, rows });
  expect(isYes(need)).toBe(side === 'yes');
  if (recipe.line === 'number') expectInBand(share, level);
  const other = across === null ? recipe.otherwise?.({ answers, rows }) : { answers: across, rows };
  // that a program for tilting axes is not written by hand hangs on the rotary alone
  if (other === undefined) expect(id).toBe('camPost');
  else expect(isYes(needOn(other))).toBe(side === 'no');
}

/** With the rule turned it says the opposite; where the finding hangs on it, that is another, else one number makes it say so. */
function expectRuleDecides(
  { id, class: ofClass, what }: Extract<Exercise['decides'], { rule: 'class rule' }>,
  { lesson: { answers }, catalog: rows, side, level, share, across }: Exercise,
): void {
  const speaks = ({ said }: Spoken): boolean => said.some((each) => each.rule === id && each.sure);
  const groundOn = (on: Answers) => classGround(ofClass, on, standingOf(on, rows));
  const ground = groundOn(answers);
  const [spoken, turned] = [spokenOf(ground), spokenOf(ground, id)];
  expect([speaks(spoken), speaks(turned)]).toEqual(side === 'yes' ? [true, false] : [false, true]);
  const { line, moves } = CLASS_RECIPES[id];
  if (line === 'number') expectInBand(share, level);
  if (what === 'finding') expect(turned.finding).not.toBe(spoken.finding);
  else if (moves.length > 0) {
    if (across === null) throw new Error('no number moves it over its line');
    expect(speaks(spokenOf(groundOn(across)))).toBe(side === 'no');
  }
}

/** What was moved stands on its grid and in its range; all other numbers of the part within what a small shop meets. */
function expectInRange({ lesson: { answers }, moved }: Exercise): void {
  if (moved !== null) {
    const { of, path, least, most, step } = DRAWN_ANSWERS[moved];
    const ground = { answers, catalog };
    const keys = keysOf(of === 'part' ? `parts[${answers.parts[0]?.name}].${path}` : path, ground);
    const value = keys === null ? null : numberAt(ground, keys);
    expect(value).toBeGreaterThanOrEqual(least);
    expect(value).toBeLessThanOrEqual(most);
    expect(Math.abs(Number(value) / step - Math.round(Number(value) / step))).toBeLessThan(1e-6);
  }
  for (const [key, value] of numbersOf(answers)) {
    const range = NOT_SURE[key];
    expect(value, key).toBeGreaterThanOrEqual(range.low);
    expect(value, key).toBeLessThanOrEqual(range.high);
  }
}

function numbersOf({ parts: [part], tools, shop, money }: Answers) {
  const all = [
    ['parts.size', part?.size[0]],
    ['parts.size', part?.size[1]],
    ['parts.size', part?.size[2]],
    ['parts.diameter', part?.diameter],
    ['parts.length', part?.length],
    ['parts.mass', part?.mass],
    ['parts.holding.diameter', part?.holding.diameter],
    ['parts.holding.height', part?.holding.height],
    ['parts.eccentricity', part?.eccentricity],
    ['parts.tolerance', part?.tolerance],
    ['tools.shortest', tools.shortest],
    ['tools.longest', tools.longest],
    ['shop.ceiling', shop.ceiling],
    ['shop.bay', shop.bay[0]],
    ['shop.bay', shop.bay[1]],
    ['money.budget', money.budget],
  ] as const;
  return all.flatMap(([key, value]) => (typeof value === 'number' ? [[key, value] as const] : []));
}

/** Prepared, and gone through with what comes out, for all of the points; each step has its words. */
function expectSolvable({ lesson, catalog: rows, given }: Exercise): void {
  const ready = prepareLesson(lesson, rows);
  if (!ready.ok) throw new Error(ready.faults.join('\n'));
  let run = LESSON_START;
  for (const [index, key] of ready.keys.entries()) {
    expect(lesson.steps[index]?.ask).not.toMatch(/undefined|NaN/);
    expectOddAnswersHandled(ready, run, key);
    const text = key.kind === 'choice' ? key.value : String(Number(key.value.toPrecision(6)));
    run = runLesson(ready, run, { type: 'predict', text, units: 'mm' });
    expect(run.feedback).toEqual({ kind: 'right', points: FULL_POINTS });
    run = runLesson(ready, run, { type: 'next' });
  }
  expect(scoreOf(run).points).toBe(ready.keys.length * FULL_POINTS);
  for (const { value } of given) expect(Number.isFinite(value)).toBe(true);
}
