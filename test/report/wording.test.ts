import { describe, expect, it } from 'vitest';
import { MATERIAL_IDS } from '../../src/mechanics/forces/materials.ts';
import { MEASURES } from '../../src/questions/answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import { NOT_SURE } from '../../src/questions/ranges.ts';
import { valueWords } from '../../src/report/value-words.ts';
import {
  CLASS_WORDS,
  CLEARANCE_WORDS,
  MACHINE_KIND_WORDS,
  MOUNTING_WORDS,
  PLATE_WORDS,
  PRICE_WORDS,
} from '../../src/report/wording/arrangement.ts';
import { CAUTION_ASKS, CAUTION_WORDS } from '../../src/report/wording/cautions.ts';
import { CHECK_WORDS } from '../../src/report/wording/checks.ts';
import {
  CLASS_ARGUMENT_WORDS,
  FINDING_WORDS,
  ROUTE_ARGUMENT_WORDS,
  ROUTE_WORDS,
} from '../../src/report/wording/class-arguments.ts';
import {
  FEATURE_NEED_WORDS,
  FEATURE_REASON_WORDS,
  FEATURE_WORDS,
  THERE_WORDS,
} from '../../src/report/wording/features.ts';
import { NEXT_STEPS, PLAIN_CLASS_WORDS } from '../../src/report/wording/half-page.ts';
import { LIFTING_CAUTIONS, MEANS_WORDS, NO_MEANS_WORDS } from '../../src/report/wording/lifting.ts';
import { MATERIAL_WORDS } from '../../src/report/wording/materials.ts';
import { MEASURE_WORDS } from '../../src/report/wording/measures.ts';
import { MEASURE_TO_TAKE_WORDS } from '../../src/report/wording/measures-to-take.ts';
import { MACHINE_QUESTIONS, ROTARY_QUESTIONS } from '../../src/report/wording/quote-questions.ts';
import { SITE_WORDS } from '../../src/report/wording/site.ts';
import { STAGE_WORDS } from '../../src/report/wording/stages.ts';
import { OUTCOME_WORDS, VERDICT_WORDS } from '../../src/report/wording/verdicts.ts';
import { CAUTIONS } from '../../src/rules/cautions.ts';
import { CHECK_IDS } from '../../src/rules/checks/ids.ts';
import { ROUTE_RULE_IDS } from '../../src/rules/classes/routes/rule-ids.ts';
import { CLASS_RULE_IDS } from '../../src/rules/classes/rule-ids.ts';
import { MEASURES_TO_TAKE, ROUTES, VERDICTS } from '../../src/rules/decision.ts';
import { FEATURE_IDS, FEATURE_REASONS } from '../../src/rules/features/ids.ts';
import { STAGES } from '../../src/rules/stages/index.ts';

const TABLES: Readonly<Record<string, object>> = {
  checks: CHECK_WORDS,
  stages: STAGE_WORDS,
  measures: MEASURE_WORDS,
  verdicts: VERDICT_WORDS,
  outcomes: OUTCOME_WORDS,
  cautions: CAUTION_WORDS,
  'whom a caution defers to': CAUTION_ASKS,
  'rows of the site sheet': SITE_WORDS,
  'next steps': NEXT_STEPS,
  'classes in plain words': PLAIN_CLASS_WORDS,
  'questions for the seller of a machine': MACHINE_QUESTIONS,
  'questions for the seller of a rotary': ROTARY_QUESTIONS,
  'measures to take': MEASURE_TO_TAKE_WORDS,
  mountings: MOUNTING_WORDS,
  classes: CLASS_WORDS,
  'kinds of machine': MACHINE_KIND_WORDS,
  clearance: CLEARANCE_WORDS,
  plates: PLATE_WORDS,
  prices: PRICE_WORDS,
  means: MEANS_WORDS,
  'no means': NO_MEANS_WORDS,
  'lifting cautions': LIFTING_CAUTIONS,
  features: FEATURE_WORDS,
  needs: FEATURE_NEED_WORDS,
  'reasons for a feature': FEATURE_REASON_WORDS,
  'where a feature is': THERE_WORDS,
  findings: FINDING_WORDS,
  'arguments of a class': CLASS_ARGUMENT_WORDS,
  'arguments of a route': ROUTE_ARGUMENT_WORDS,
  routes: ROUTE_WORDS,
  materials: MATERIAL_WORDS,
};

const strings = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(strings) : [];
};

describe('Words', () => {
  it.each([
    ['checks', CHECK_WORDS, CHECK_IDS],
    ['stages', STAGE_WORDS, STAGES],
    ['measures', MEASURE_WORDS, MEASURES],
    ['verdicts', VERDICT_WORDS, VERDICTS],
    ['cautions', CAUTION_WORDS, CAUTIONS],
    ['measures to take', MEASURE_TO_TAKE_WORDS, MEASURES_TO_TAKE],
    ['materials', MATERIAL_WORDS, MATERIAL_IDS],
    ['arguments of a class', CLASS_ARGUMENT_WORDS, CLASS_RULE_IDS],
    ['arguments of a route', ROUTE_ARGUMENT_WORDS, ROUTE_RULE_IDS],
    ['routes', ROUTE_WORDS, ROUTES],
    ['features', FEATURE_WORDS, FEATURE_IDS],
    ['reasons for a feature', FEATURE_REASON_WORDS, FEATURE_REASONS],
  ] as const)('for all %s, and for nothing else', (_what, table, ids) => {
    expect(Object.keys(table).toSorted()).toEqual([...ids].toSorted());
  });

  it.each(Object.entries(TABLES))('for %s hold no digits and no blanks', (_what, table) => {
    const all = strings(table);
    expect(
      all.filter(
        (text) => /\d/.test(text) || text.trim() !== text || (text === '' && table !== MEASURE_WORDS),
      ),
    ).toEqual([]);
  });

  it('for a check differ from those of every other', () => {
    for (const key of ['name', 'title', 'sentence'] as const) {
      const all = Object.values(CHECK_WORDS).map((words) => words[key]);
      expect(new Set(all).size).toBe(all.length);
    }
  });

  it('that say a whole sentence end like one', () => {
    const sentences = [
      ...Object.values(CHECK_WORDS).map(({ sentence }) => sentence),
      ...Object.values(CAUTION_WORDS),
    ];
    expect(sentences.filter((sentence) => !/^[A-Z].*\.$/.test(sentence))).toEqual([]);
  });

  it('that begin a report are in every language of signs: each verdict has its own', () => {
    const verdicts = Object.values(VERDICT_WORDS);
    expect(new Set(verdicts.map(({ sign }) => sign)).size).toBe(VERDICTS.length);
    expect(new Set(verdicts.map(({ ascii }) => ascii)).size).toBe(VERDICTS.length);
    expect(verdicts.filter(({ ascii }) => !/^[ -~]+$/.test(ascii))).toEqual([]);
  });
});

describe('An answer that can be unknown', () => {
  const paths = [...QUESTIONS.map(({ path }) => path), ...Object.keys(NOT_SURE)];
  it.each([...new Set(paths)])('%s has words', (path) => {
    const words = valueWords(path.replace(/^parts\./, 'parts[Hinge].'));
    expect(words?.words).toMatch(/[a-z]/);
    expect(words?.words).not.toMatch(/\d/);
  });
});
