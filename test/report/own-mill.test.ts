import { describe, expect, test } from 'vitest';
import { bigger } from '../../src/report/sections/bigger.ts';
import { ownMill } from '../../src/report/sections/own-mill.ts';
import { decide } from '../../src/rules/decide.ts';
import { demoDecisions } from './demo-decisions.ts';
import { blockText } from './section-text.ts';

const found = demoDecisions().find(([name]) => name === 'shop-own-mill')?.[1];
if (found === undefined) throw new Error('the demo shop with a mill is gone');

describe('the mill that is owned', () => {
  const text = blockText(ownMill(found), found);

  test('what it takes, what came near and why, what limits it, and the next purchase', () => {
    expect(text).toContain('Rowan with Plover (tilt axis along X): 100 % of the hours, 41\u202f500 EUR');
    expect(text).toMatch(/Rowan with Dotterel .*lifting the rotary.*short by/);
    expect(text).toContain('a spindle nose that rises to 520 mm');
    expect(text).toContain('The next purchase: nothing in this catalog would surely hold more');
  });

  test('that takes nothing says so', () => {
    const { answers, catalog } = found.inputs;
    const heavy = {
      ...answers,
      parts: answers.parts.map((part) => ({ ...part, holding: { ...part.holding, mass: 400 } })),
    };
    const none = decide(heavy, catalog, { flips: [] });
    expect(blockText(ownMill(none), none)).toContain('It takes no rotary of this catalog that passes.');
  });

  test('a shop without one reads nothing of it', () => {
    const { answers, catalog } = found.inputs;
    const without = decide({ ...answers, shop: { ...answers.shop, machine: 'none' } }, catalog);
    expect(ownMill(without)).toEqual([]);
  });
});

test('the next size up that has a shorter base is called shorter', () => {
  expect(blockText(bigger(found), found)).toContain('100 mm (3.937 in) shorter on the table');
});
