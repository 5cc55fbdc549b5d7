import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { decideCommand } from '../../src/commands/decide.ts';
import { OUTCOME_CODES } from '../../src/commands/outcome-codes.ts';
import { answersToFile } from '../../src/questions/write-answers.ts';
import { paperInFile, textReport } from '../../src/report/index.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { newSession } from '../../src/session/start.ts';
import { createWorld, type World } from '../../src/session/world.ts';
import { beginning, type Ui } from '../../src/ui/state/ui.ts';
import { EXAMPLE_CATALOG, EXAMPLE_MACHINE, EXAMPLE_ROTARY } from '../rules/example-shop.ts';
import { folderWith } from '../temporary-folder.ts';
import { textFrame } from '../ui/demo-screens.ts';
import { control, KEY, after as pressed } from '../ui/pressing.ts';
import { lineByLine } from './line-shell.ts';

/** Small, so that a decision after every answer is quick; invented like the rest. */
const CATALOG = {
  ...EXAMPLE_CATALOG,
  machines: [EXAMPLE_MACHINE, { ...EXAMPLE_MACHINE, id: 'larger-mill', name: 'Larger mill', price: 98000 }],
  rotaries: [EXAMPLE_ROTARY, { ...EXAMPLE_ROTARY, id: 'larger', name: 'Larger rotary', price: 39000 }],
};

const world = (): World => createWorld(CATALOG, decide);

/** First, second and third, each with whom to ask. */
const THREE = /Most worth finding out: first, .+: .+; second, .+: .+; third, .+: .+\./;
const inOneLine = (text: string): string => text.replace(/\s+/g, ' ');

/** An open result that says at its top what to find out. */
function isHonest(decision: Decision | null): asserts decision is Decision {
  expect(decision?.outcome).toBe('open');
  expect(decision?.recommended).toBeNull();
  expect(decision?.unknowns.filter(({ decides }) => decides).length).toBeGreaterThanOrEqual(3);
}

const MOST_TURNS = 200;

describe('requirement 13: an interview in which nobody is sure of anything', () => {
  test('ends with an open result line by line', async () => {
    const here = world();
    let turns = 0;
    const reply = (printed: string): string => {
      if (printed.endsWith('Parts > ') || printed.endsWith('Enter for the result > ')) return '';
      return printed.endsWith('File > ') ? 'no' : 'not sure';
    };
    const left = await lineByLine(newSession(here, [], null), here, {
      next: async (printed) => {
        turns += 1;
        return turns > MOST_TURNS ? { end: 'input' } : { line: reply(printed), early: false };
      },
      resultText: ({ kept }) => {
        const decision = here.decision(kept);
        return decision === null ? '' : textReport(decision, { width: 80, ascii: false });
      },
    });
    expect(left.ending).toEqual({ how: 'finished' });
    const decision = here.decision(left.session.kept);
    isHonest(decision);
    expect(OUTCOME_CODES[decision.outcome]).toBe(4);
    expect(inOneLine(left.printed)).toMatch(THREE);
    // at the top: before what may still win
    const report = inOneLine(textReport(decision, { width: 80, ascii: false }));
    expect(report.search(THREE)).toBeLessThan(report.indexOf('These may still win'));
  });

  test('ends with an open result on the screen', () => {
    const here = world();
    let ui: Ui = beginning(newSession(here, [], null), null);
    for (let turns = 0; ui.session.at.at !== 'result'; turns += 1) {
      expect(turns).toBeLessThan(MOST_TURNS);
      ui = pressed(ui, here, ui.session.at.at === 'question' ? control('n') : KEY.enter);
    }
    const decision = here.decision(ui.session.kept);
    isHonest(decision);
    const [title = '', ...rows] = textFrame(ui, { columns: 80, rows: 24 }, here);
    expect(title).toContain('The answer');
    expect(inOneLine(rows.join(' '))).toMatch(THREE);
    expect(inOneLine(paperInFile(decision, 'half-page', 'half.txt'))).toContain('Most worth finding out');
    // the same answers from a file, without a terminal
    const { answers } = here.survey(ui.session.kept);
    expect(decide(answers, CATALOG, { flips: [] }).unknowns).toEqual(decision.unknowns);
  });

  test('ends with exit code 4 from an answers file', async () => {
    const here = world();
    const asked = pressed(beginning(newSession(here, [], null), null), here, control('n'), control('n'));
    const named = pressed(asked, here, control('n'));
    const folder = folderWith({
      'nothing.answers.yaml': answersToFile(here.survey(named.session.kept).answers, { units: 'mm' }).text,
      'catalog/catalog.yaml': readFileSync(
        join(import.meta.dirname, '../fixtures/contract.catalog.yaml'),
        'utf8',
      ),
    });
    let [result, remarks] = ['', ''];
    const code = await decideCommand(
      join(folder, 'nothing.answers.yaml'),
      { catalog: [join(folder, 'catalog')] },
      {
        result: (text) => {
          result += text;
        },
        remark: (line) => {
          remarks += line;
        },
        columns: 80,
      },
    );
    expect(remarks).toBe('');
    expect(code).toBe(4);
    expect(inOneLine(result)).toMatch(THREE);
  });
});
