import { describe, expect, test } from 'vitest';
import { checkRows } from '../../src/report/arrangement-rows.ts';
import { missLines } from '../../src/report/screen-lines.ts';
import { CHECK_WORDS } from '../../src/report/wording/checks.ts';
import { decide } from '../../src/rules/decide.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';

const LOSER = 'alder+bittern/tilt-along-x';
const decision = decide(demoAnswers('shop').answers, demoCatalog(), { also: [LOSER] });

describe('why not this one', () => {
  const text = missLines(decision, LOSER, { width: 1000, ascii: false }).join('\n');
  const failing = decision.arrangements
    .find(({ id }) => id === LOSER)
    ?.checks.filter(({ verdict, advisory }) => verdict === 'fails' && advisory !== true);

  test('names every check that fails once, where it is worst, and the other parts', () => {
    const checks = [...new Set(failing?.map(({ check }) => check))];
    expect(checks.length).toBeGreaterThan(1);
    for (const check of checks) expect(text.split(`- ${CHECK_WORDS[check].name} `)).toHaveLength(2);
    for (const { part } of failing ?? []) expect(text).toContain(part ?? '');
    expect(text).toMatch(/- table load at Kettle manway plate .*; also at Rudder hinge, .* and /);
  });
});

describe('why this one', () => {
  const rows = checkRows(decision, decision.recommended ?? '', false);

  test('what is not asked for comes last, whatever its margin', () => {
    const first = rows.findIndex(({ need, verdict }) => need === 'no' && verdict === 'holds');
    expect(rows.slice(first).filter(({ need }) => need === 'no').length).toBeGreaterThan(3);
    expect(rows.slice(first).filter(({ share }) => share !== null)).toEqual([]);
  });
});
