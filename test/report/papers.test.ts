import { describe, expect, it } from 'vitest';
import wrapAnsi from 'wrap-ansi';
import type { Block } from '../../src/report/blocks/block.ts';
import { acceptance } from '../../src/report/sections/acceptance.ts';
import { cautions, documents } from '../../src/report/sections/cautions.ts';
import { halfPage } from '../../src/report/sections/half-page.ts';
import { siteSheet } from '../../src/report/sections/site-sheet.ts';
import { wholeReport } from '../../src/report/whole-report.ts';
import { decide } from '../../src/rules/decide.ts';
import type { CheckResult, Decision } from '../../src/rules/decision.ts';
import { DECISIONS } from './decisions.ts';
import { demoDecisions } from './demo-decisions.ts';
import { fixtureDecision } from './fixture.ts';
import { check } from './fixture-checks.ts';
import { blockText } from './section-text.ts';

type Section = (decision: Decision) => readonly Block[];

const DEMOS = demoDecisions();
const demo = (shop: string): Decision => DEMOS.find(([what]) => what === shop)?.[1] ?? fixtureDecision();
const said = (section: Section, decision: Decision): string => blockText(section(decision), decision);

/** The recommended arrangement with something else in it. */
const changed = (decision: Decision, change: Partial<Decision['arrangements'][number]>): Decision => ({
  ...decision,
  arrangements: decision.arrangements.map((each) =>
    each.id === decision.recommended ? { ...each, ...change } : each,
  ),
});

describe('The half page', () => {
  it.each(DEMOS)('of %s has at most 30 lines of 80 columns', (_what, decision) => {
    const lines = wrapAnsi(said(halfPage, decision), 80).split('\n');
    expect(lines.length).toBeLessThanOrEqual(30);
  });

  it.each([...DECISIONS, ...DEMOS])('of %s stands first, right under the title', (_what, decision) => {
    const [title, first] = wholeReport(decision);
    expect(title).toMatchObject({ kind: 'heading', level: 1 });
    expect(first).toEqual(halfPage(decision)[0]);
  });

  it.each([...DECISIONS, ...DEMOS])('of %s says three steps, and no word of the trade', (_what, decision) => {
    const blocks = halfPage(decision);
    const last = blocks.at(-1);
    expect(last?.kind === 'list' ? last.items.length : 0).toBe(3);
    expect(said(halfPage, decision)).not.toMatch(
      /trunnion|tilt axis|five-axis hours|coverage|faceplate|holds if/,
    );
  });

  it('says what to buy, for what, at which price, what it brings and what not', () => {
    const text = said(halfPage, demo('shop'));
    for (const words of [
      'Recommended: buy the milling machine Alder and the rotary Lapwing.',
      'It costs 144\u202f300 EUR to buy, and 151\u202f300 EUR with transport, training and software; the budget is 172\u202f000 EUR.',
      'They make up 98.2 % of the yearly hours of all work that such a rotary could take over.',
      'It cannot make Kettle manway plate, which stays as it is made today.',
      'has paid for itself after 4.1 years, interest left out.',
      'more than it costs (present value).',
    ])
      expect(text).toContain(words);
  });

  it('names three risks, a loss first', () => {
    const { answers, catalog } = demo('shop').inputs;
    // at a third of the rate it does not pay
    const poor = decide({ ...answers, money: { ...answers.money, shopRate: 28 } }, catalog);
    const text = said(halfPage, poor);
    expect(text).toContain('less than it costs (present value).');
    const risks = text
      .slice(text.indexOf('The biggest risks:'), text.indexOf('What to do next:'))
      .trim()
      .split('\n');
    expect(risks).toHaveLength(4);
    expect(risks[1]).toContain('It does not bring back its price within the 5 years that are looked at.');
    expect(risks[2]).toContain('floor load');
  });

  it('names what is open in the building once, and a budget that may not do', () => {
    const open = (id: string, part: string | null): CheckResult =>
      check({ check: id as CheckResult['check'], stage: 'shop', part, verdict: 'open' });
    const decision = fixtureDecision();
    const first = decision.arrangements.find(({ id }) => id === decision.recommended);
    const added = [open('inertia', 'one'), open('inertia', 'other'), open('budget', null)];
    const text = said(halfPage, {
      ...changed(decision, { checks: [...(first?.checks ?? []), ...added] }),
      unknowns: [],
    });
    expect(text).toContain('It is not settled whether the budget pays for all of it.');
    expect(text).toContain('Not settled in the building: moment of inertia. See the site sheet.');
  });

  it('buys only the rotary for a mill that is owned', () => {
    expect(said(halfPage, demo('shop-own-mill'))).toContain(
      'Recommended: buy the rotary Plover for the mill Rowan, which is owned already.',
    );
  });

  it('says that a gain that nobody knows is hardly known, and leaves out what is null', () => {
    const decision = fixtureDecision();
    const first = decision.arrangements.find(({ id }) => id === decision.recommended);
    if (first === undefined) throw new Error('nothing is recommended');
    const { money } = first;
    const without = changed(decision, {
      money: { ...money, gain: null, netPresentValue: null, terms: { ...money.terms, ranked: false } },
    });
    const text = said(halfPage, without);
    expect(text).toContain('Nobody named what an hour of work is sold for');
    expect(text).not.toContain('present value');
    expect(text).not.toContain('paid for itself');
  });

  it('says that it brings back more than it costs where it does', () => {
    const decision = fixtureDecision();
    const first = decision.arrangements.find(({ id }) => id === decision.recommended);
    if (first === undefined) throw new Error('nothing is recommended');
    const good = changed(decision, { money: { ...first.money, netPresentValue: [800, 12000] } });
    expect(said(halfPage, good)).toContain('it brings back 800 to 12\u202f000 EUR more than it costs');
    expect(said(halfPage, good)).not.toContain('bring back its price');
  });

  it('recommends nothing where it is open, and says what decides', () => {
    const text = said(halfPage, demo('shop-many-unknowns'));
    expect(text).toContain('Nothing can be recommended yet.');
    expect(text).toContain('length (Pump casing): the shop can measure it or look it up');
    expect(text).not.toContain('Recommended: buy');
  });

  it('says why nothing is to be bought, and how near the nearest came', () => {
    const text = said(halfPage, demo('shop-nothing-passes'));
    expect(text).toContain('so nothing should be ordered.');
    expect(text).toContain(
      'The nearest is Spindlewood. What stops it first is swing, for Stern casting: needed 1128.1 mm, there is 950 mm',
    );
  });
});

describe('The site sheet', () => {
  it('holds what the answers say beside what the catalog asks, and who confirms it', () => {
    const text = said(siteSheet, demo('shop'));
    expect(text).toMatch(
      /Floor \| not known \| machine 4173 kg, rotary 168 kg; .* \| a structural engineer \| …+/,
    );
    expect(text).toMatch(
      /Electric power \| free load: 40 kVA.* \| 28 kVA at 400 V, phases: 3 \| .* \| a licensed electrician/,
    );
    expect(text).toMatch(
      /Lifting the rotary \| hoist, rated 500 kg.*; by hand, people: 2 \| 168 kg, lifting points: 2/,
    );
  });

  it.each(['bay', 'ceiling', 'doorway', 'floor-load', 'power', 'air', 'lift', 'hook-height'])(
    'shows what the check %s says once there is one',
    (id) => {
      const decision = fixtureDecision();
      const own = check({ check: id as CheckResult['check'], stage: 'shop', need: 41, have: 43, unit: 'mm' });
      const first = decision.arrangements.find((each) => each.id === decision.recommended);
      const without = changed(decision, { checks: [] });
      const withIt = changed(decision, { checks: [...(first?.checks ?? []), own] });
      expect(said(siteSheet, without)).not.toContain('needed 41 mm');
      expect(said(siteSheet, withIt)).toContain('✓ holds: needed 41 mm, there is 43 mm');
    },
  );

  it('shows of a check over several parts the worst', () => {
    const decision = fixtureDecision();
    const on = (part: string, margin: number): CheckResult =>
      check({
        check: 'air',
        stage: 'shop',
        part,
        need: 43 - margin,
        have: 43,
        relativeMargin: margin / 43,
      } as never);
    const text = said(siteSheet, changed(decision, { checks: [on('one', 9), on('other', 2)] }));
    expect(text).toContain('needed 41 mm');
    expect(text).not.toContain('needed 34 mm');
  });

  it('does not ask again where an owned mill stands', () => {
    expect(said(siteSheet, demo('shop-own-mill'))).toMatch(
      /Doorway \| .* \| the mill stands there already \| nothing to confirm/,
    );
  });

  it('says what each machine asks where it is open which it will be', () => {
    const text = said(siteSheet, demo('shop-many-unknowns'));
    expect(text).toMatch(/Larch \| 2800 mm wide, 2500 mm deep \| room to work 600 mm on the left/);
    expect(text).toContain('Each rotary has to be lifted on:');
  });

  it('holds nothing against the building where nothing is recommended', () => {
    const text = said(siteSheet, demo('shop-nothing-passes'));
    expect(text).toContain('Nothing is recommended as things stand');
    expect(text).not.toContain('What is recommended needs');
  });
});

describe('The acceptance tests', () => {
  it('say what each shows and does not show, with what the catalog states', () => {
    const text = said(acceptance, demo('shop'));
    for (const name of ['ISO 230-2', 'ISO 230-7', 'ISO 10791-6']) expect(text).toContain(name);
    expect(text).toContain('the catalog states rotary axis 12 arcsec, tilt axis 20 arcsec');
    expect(text).toContain('none of the tests above states accuracy in your part');
    expect(text).toContain('all axes move at once');
  });

  it('ask for no paths of moving axes where the axes stand braked', () => {
    expect(said(acceptance, demo('shop-own-mill'))).toContain('needed less: the axes stand braked');
  });

  it('are not asked for where nothing is bought', () => {
    expect(acceptance(demo('shop-nothing-passes'))).toEqual([]);
  });
});

describe('The cautions', () => {
  it.each([...DECISIONS, ...DEMOS])('of %s defer to local code, each with whom to ask', (_what, decision) => {
    const text = said(cautions, decision);
    expect(text).toContain('defers to local code and to licensed practice');
    const items = text.split('\n').filter((line) => line.startsWith('- '));
    expect(items.length).toBeGreaterThan(3);
    expect(items.filter((item) => !/ Ask: .+\.$/.test(item))).toEqual([]);
  });

  it('say of a document when its title and scope are from memory', () => {
    const text = said(documents, fixtureDecision());
    expect(text).toMatch(/ISO 12100: .*\(title and scope from memory\)/);
    expect(text).not.toMatch(/ISO 16090-1: .*from memory/);
  });
});
