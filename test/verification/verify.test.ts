import { describe, expect, test } from 'vitest';
import type { Reading } from '../../src/documents/problem.ts';
import { describeProblem } from '../../src/documents/problem.ts';
import { INPUTS_FENCE, jsonReport, markdownReport } from '../../src/report/index.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { differences } from '../../src/verification/json-differences.ts';
import { lineDifferences } from '../../src/verification/line-differences.ts';
import { readAsWritten } from '../../src/verification/numbers-as-written.ts';
import { type Verification, verify } from '../../src/verification/verify.ts';
import { demoAnswers, demoCatalog, demoShops } from '../catalog-demo/demo.ts';
import { NUMBER, nudged } from './nudged.ts';

const CATALOG = demoCatalog();

function decided(shop: string, options: Parameters<typeof decide>[2] = {}, catalog = CATALOG): Decision {
  const { answers, shownIn } = demoAnswers(shop);
  return decide(answers, catalog, { shownIn, flips: [], ranges: true, ...options });
}

function found(reading: Reading<Verification>): Verification {
  if (!reading.ok) throw new Error(reading.problems.map(describeProblem).join('\n'));
  return reading.value;
}

/** A small export: one mill, two rotaries, the shop that has a mill. */
const SMALL = decided(
  'shop-own-mill',
  { also: [] },
  {
    ...CATALOG,
    rotaries: CATALOG.rotaries.filter(({ id }) => ['plover', 'whinchat'].includes(id)),
    machines: CATALOG.machines.filter(({ id }) => id === 'rowan'),
  },
);

describe.each(demoShops())('the exports of %s come out the same', (shop) => {
  const decision = decided(shop);

  test('as a decision', () => {
    const { kind, numbers, differences: none } = found(verify(jsonReport(decision), 'f'));
    expect([kind, none]).toEqual(['decision', []]);
    expect(numbers).toBeGreaterThan(1000);
  });

  test('as a paper, its lines ended in either way', () => {
    const paper = markdownReport(decision);
    expect(found(verify(paper.replaceAll('\n', '\r\n'), 'f'))).toMatchObject({
      kind: 'paper',
      differences: [],
    });
  });
});

test('with every arrangement listed, and in inches, it comes out the same', () => {
  const small = { also: [], all: true, shownIn: 'inch' } as const;
  const decision = decided('shop-own-mill', small, SMALL.inputs.catalog);
  expect(found(verify(jsonReport(decision), 'f')).differences).toEqual([]);
  expect(found(verify(markdownReport(decision), 'f')).differences).toEqual([]);
});

test('any one number of a decision, outside its inputs, that is off by one in its last digit is found', () => {
  const text = jsonReport(SMALL);
  const comesOut = readAsWritten(text);
  const inputsEnd = text.indexOf('\n  },\n  "outcome"');
  expect(inputsEnd).toBeGreaterThan(0);
  let tried = 0;
  const missed: string[] = [];
  for (const match of text.matchAll(NUMBER)) {
    if (match[0].startsWith('"') || match.index < inputsEnd) continue;
    tried += 1;
    const changed = nudged(text, match.index, match[0]);
    if (differences(readAsWritten(changed), comesOut).length !== 1)
      missed.push(text.slice(match.index - 40, match.index + 20));
  }
  expect(missed).toEqual([]);
  expect(tried).toBeGreaterThan(1000);
}, 480_000);

test('so is any one number of a paper', () => {
  const paper = markdownReport(SMALL);
  const end = paper.indexOf(INPUTS_FENCE);
  let tried = 0;
  const missed: string[] = [];
  for (const match of paper.slice(0, end).matchAll(/\d+(?:\.\d+)?/g)) {
    tried += 1;
    const changed = nudged(paper, match.index, match[0]);
    const line = paper.slice(0, match.index).split('\n').length;
    const [first, second] = lineDifferences(changed.slice(0, end), paper.slice(0, end));
    if (first?.where !== `line ${line}` || second !== undefined) missed.push(`${line}: ${match[0]}`);
  }
  expect(missed).toEqual([]);
  expect(tried).toBeGreaterThan(500);
}, 480_000);

describe('what was changed is named', () => {
  test('a number of a check, by the arrangement and its place', () => {
    const text = jsonReport(SMALL).replace(/"margin": (\d)/, '"margin": 9$1');
    const [difference, more] = found(verify(text, 'f')).differences;
    expect(difference?.where).toMatch(/^arrangements\[rowan\+.*\]/);
    expect(more).toBeUndefined();
  });

  test('an answer that was changed afterwards: what follows from it does not come out any more', () => {
    const text = jsonReport(SMALL).replace('"longest": ', '"longest": 1');
    expect(found(verify(text, 'f')).differences.length).toBeGreaterThan(10);
  });

  test('an assumption, though it stands in the inputs: the program made it', () => {
    const text = jsonReport(SMALL).replace('"approach": 25', '"approach": 26');
    expect(found(verify(text, 'f')).differences.map(({ where }) => where)).toEqual([
      'inputs.assume.approach',
    ]);
  });

  test('how far an answer may move, where it may not: in a decision and in a paper', () => {
    const claim = { answer: 'tools.longest', at: 180, low: 179.5, high: 180.25, givenUp: [] };
    const claimed: Decision = { ...SMALL, recommended: 'rowan+plover/axis-along-x', stability: [claim] };
    const { differences: inJson } = found(verify(jsonReport({ ...SMALL, stability: [claim] }), 'f'));
    expect(inJson.some(({ where }) => where.startsWith('stability['))).toBe(true);
    const { differences: inPaper } = found(verify(markdownReport(claimed), 'f'));
    expect(inPaper.some(({ says }) => says?.includes('longest tool') && says.includes('179.5 mm'))).toBe(
      true,
    );
  });

  test('an arrangement that was taken out', () => {
    const decision = JSON.parse(jsonReport(SMALL)) as { arrangements: { id: string }[] };
    const gone = decision.arrangements.shift()?.id;
    const wheres = found(verify(JSON.stringify(decision), 'f')).differences.map(({ where }) => where);
    expect(wheres).toEqual([`arrangements.[${gone}]`]);
  });
});

describe('what cannot be worked out again is refused, with the place', () => {
  const problems = (text: string): readonly string[] => {
    const reading = verify(text, 'f');
    return reading.ok ? [] : reading.problems.map(describeProblem);
  };

  test('text, a broken export, another JSON file', () => {
    expect(problems('# A paper\n')).toEqual([
      'f:0:0: the file carries no inputs that it could be worked out from, expected a whole report in Markdown, or a decision file in JSON',
    ]);
    expect(problems('{"format":')[0]).toMatch(/^f:1:1: this is no JSON/);
    expect(problems('{"format":"other/1"}')).toEqual([
      'f:0:0: this is no decision, expected a file with the format fivesides-decision/1',
    ]);
  });

  test('answers and catalog that are none, each named as in their own files', () => {
    const text = jsonReport(SMALL)
      .replace('"stands": "upright"', '"stands": "crooked"')
      .replace('"id": "rowan"', '"id": 7');
    const all = problems(text);
    expect(all[0]).toMatch(/^f:\d+:1: in inputs\.catalog machines\[.*\]\.id is 7/);
    expect(problems('{"format":"fivesides-decision/1"}').length).toBeGreaterThan(0);
    const onlyAnswers = problems(jsonReport(SMALL).replace('"stands": "upright"', '"stands": "crooked"'));
    expect(onlyAnswers[0]).toMatch(/^f:\d+:1: in inputs\.answers parts\[.*\]\.stands is "crooked"/);
  });

  test('a paper whose inputs were broken', () => {
    expect(problems(markdownReport(SMALL).replace('"listed": [', '"listed": ['.concat('[')))[0]).toMatch(
      /^f:\d+:1: this is no JSON/,
    );
  });
});
