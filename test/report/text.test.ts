import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { textReport } from '../../src/report/index.ts';
import { numbersIn } from './account.ts';
import { DECISIONS } from './decisions.ts';
import { fixtureDecision } from './fixture.ts';
import { STEERS } from './steers.ts';

const WIDTHS = [60, 80, 120];

describe.each(DECISIONS)('The text of %s', (_what, decision) => {
  it('is no wider than asked for, at any width', () => {
    for (let width = 40; width <= 130; width += 3) {
      const lines = textReport(decision, { width, ascii: false }).split('\n');
      expect(
        lines.filter((line) => stringWidth(line) > width),
        `at ${width}`,
      ).toEqual([]);
    }
  });

  it('holds no escape codes and nothing drawn', () => {
    const text = textReport(decision, { width: 80, ascii: false });
    expect(text).not.toMatch(STEERS);
    expect(text).not.toMatch(/[\u2500-\u257f]/);
  });

  it('holds the same numbers at every width', () => {
    const [narrow, ...wider] = WIDTHS.map((width) =>
      // cells that are broken into lines stand in another order
      numbersIn(textReport(decision, { width, ascii: false })).toSorted(),
    );
    for (const numbers of wider) expect(numbers).toEqual(narrow);
  });

  it('ends with one line break', () => {
    expect(textReport(decision, { width: 80, ascii: false })).toMatch(/[^\n]\n$/);
  });
});

describe('The text of a recommendation', () => {
  const text = textReport(fixtureDecision(), { width: 80, ascii: false });

  it('keeps numbers beside their units', () => {
    expect(text).not.toMatch(/\d\n *(mm|EUR|kg|%)/);
  });

  it.each(['tight', 'What has to be done', 'Runners-up', 'Nearest misses', 'What is not known', 'Cautions'])(
    'speaks of: %s',
    (title) => {
      expect(text.toLowerCase()).toContain(title.toLowerCase());
    },
  );
});

describe('In plain ASCII', () => {
  const text = textReport(fixtureDecision(), { width: 80, ascii: true });

  it('the report holds nothing else', () => {
    expect(text).toMatch(/^[ -~\n]*$/);
  });

  it('the signs of the verdicts are words', () => {
    expect(text).toContain('NO fails');
    expect(text).toContain('IF holds if');
  });
});
