import { MATERIALS } from '../../src/mechanics/forces/materials.ts';
import { assumed } from '../../src/questions/assumptions.ts';
import type { Arrangement, Decision, Measures } from '../../src/rules/decision.ts';
import { MONEY_FORMULAS } from '../../src/rules/money/formulas.ts';
import { fixtureAnswers } from './fixture-answers.ts';
import { fixtureArguments } from './fixture-arguments.ts';
import { fixtureCatalog } from './fixture-catalog.ts';
import { check, fixtureChecks } from './fixture-checks.ts';
import { FIXTURE_FEATURES } from './fixture-features.ts';
import { fixtureMoney } from './fixture-money.ts';

/** A decision made by hand, small but with everything in it that a report can be asked to print. */

export interface FixtureOptions {
  /** changes every name that comes from outside */
  readonly name?: (plain: string) => string;
  readonly outcome?: Decision['outcome'];
  readonly shownIn?: 'mm' | 'inch';
}

const plain = (name: string): string => name;

const measures = (given: Partial<Measures>): Measures => ({
  coverage: [0.62, 0.93],
  viseStations: 2,
  price: 112100,
  payback: null,
  netPresentValue: null,
  floorArea: 14.76,
  swapHours: 0,
  margin: 0.08,
  ...given,
});

function fixtureArrangements(hinge: string, valve: string): readonly Arrangement[] {
  const first: Arrangement = {
    id: 'rowan+wren/tilt-along-y',
    machine: 'rowan',
    rotary: 'wren',
    class: 'single-support',
    mounting: 'tilt-along-y',
    place: { x: -180, y: 0, slackX: 212.5, slackY: 31 },
    space: { left: 40, right: 310, stationsLeft: 0, stationsRight: 1 },
    turned: true,
    clearance: ['lowered-table'],
    plates: [{ under: 'rotary', thickness: 30, why: 'adapter', mass: 25.7 }],
    tried: [
      { clearance: [], plates: [], sureHours: 0, stops: [{ check: 'slot-match', part: null }] },
      {
        clearance: ['lowered-table'],
        plates: [30, 55],
        sureHours: 512,
        stops: [{ check: 'reach-high', part: hinge }],
      },
    ],
    verdict: 'holds if',
    passes: 'yes',
    parts: { [hinge]: 'holds if', [valve]: 'fails' },
    measures: measures({}),
    prices: [
      { item: 'machine', which: '', price: 72000 },
      { item: 'rotary', which: '', price: 28500 },
      { item: 'clearance', which: 'lowered-table', price: 3200 },
      { item: 'axis-drives', which: '2', price: 8400 },
      { item: 'feature', which: 'somethingNew', price: null },
    ],
    features: FIXTURE_FEATURES,
    later: { raised: 75, subplate: 10, price: 900 },
    lifting: {
      mass: 120.7,
      swaps: 144,
      means: [
        {
          by: 'hoist',
          need: 120.7,
          have: 490,
          verdict: 'holds',
          people: null,
          loadCenter: null,
          sling: { hookNeed: 1930, hookHave: 2600, legPull: 69.7, eyeBolt: 107.2 },
        },
        { by: 'hand', need: 120.7, have: 17.7, verdict: 'fails', people: 2, loadCenter: null, sling: null },
        {
          by: 'forklift',
          need: 120.7,
          have: [1200, null],
          verdict: 'holds',
          people: null,
          loadCenter: 210,
          sling: null,
        },
      ],
      outcome: 'chosen',
      chosen: 2,
    },
    money: fixtureMoney(hinge, valve),
    checks: fixtureChecks(hinge, valve),
    undominated: true,
    dropped: null,
    flips: [{ change: 'tools.longest', from: 180, to: 282.9 }],
  };
  const large = { machine: 'alder', rotary: 'bittern', class: 'trunnion' } as const;
  return [
    first,
    {
      ...first,
      ...large,
      id: 'alder+bittern/tilt-along-x',
      mounting: 'tilt-along-x',
      verdict: 'holds',
      parts: { [hinge]: 'holds', [valve]: 'holds' },
      measures: measures({ coverage: 1, price: 172400, viseStations: 1 }),
      flips: [],
    },
    {
      ...first,
      machine: 'alder',
      id: 'alder+wren/tilt-along-y',
      verdict: 'fails',
      passes: 'no',
      dropped: { stage: 'envelope', check: 'swing' },
      checks: [
        check({
          check: 'swing',
          stage: 'envelope',
          part: hinge,
          verdict: 'fails',
          need: 190,
          margin: -10,
          relativeMargin: -0.0526,
        }),
      ],
      flips: [
        { change: `parts[${hinge}].depthSide`, from: [0, 150], to: 12.5 },
        { change: 'rotaries[wren].swing', from: 180, to: 190 },
      ],
    },
    {
      ...first,
      id: 'rowan+bittern/tilt-along-y',
      rotary: 'bittern',
      class: 'trunnion',
      verdict: 'open',
      passes: 'open',
      dropped: null,
      checks: [
        check({
          check: 'payload',
          stage: 'envelope',
          part: valve,
          verdict: 'open',
          need: 12,
          have: null,
          unit: 'kg',
          margin: null,
          relativeMargin: null,
        }),
      ],
    },
  ];
}

export function fixtureDecision({
  name = plain,
  outcome = 'recommended',
  shownIn = 'mm',
}: FixtureOptions = {}): Decision {
  const answers = fixtureAnswers(name);
  const [hinge, valve, cover] = ['Lock gate hinge', 'Valve body', 'Cover'].map(name) as [
    string,
    string,
    string,
  ];
  const found = outcome === 'recommended';
  return {
    format: 'fivesides-decision/1',
    inputs: {
      answers,
      catalog: fixtureCatalog(name),
      assume: assumed(answers.assume),
      materials: MATERIALS,
      shownIn,
      notSure: { 'parts.depthSide': [0, 150], 'parts.undercut': [91, 120], 'money.budget': [0, null] },
    },
    outcome,
    recommended: found ? 'rowan+wren/tilt-along-y' : null,
    contenders: outcome === 'open' ? ['rowan+bittern/tilt-along-y'] : [],
    arrangements: fixtureArrangements(hinge, valve),
    count: 84,
    market: null,
    stages: [
      { stage: 'envelope', before: 84, after: 37, dropped: { swing: 41, payload: 6 } },
      { stage: 'rotary-class', before: 37, after: 30, dropped: { 'tilt-range': 7 } },
      { stage: 'fit', before: 30, after: 22, dropped: { 'slot-match': 3, 'travel-x': 5 } },
      { stage: 'clearance', before: 22, after: 9, dropped: { 'reach-high': 13 } },
      { stage: 'features', before: 9, after: 9, dropped: {} },
      { stage: 'shop', before: 9, after: 2, dropped: { budget: 7 } },
    ],
    byRotary: [
      { rotary: 'wren', count: 60, left: 2, dropped: { swing: 41, 'tilt-range': 7, 'reach-high': 10 } },
      { rotary: 'yew/built-in', count: 1, left: 0, dropped: { budget: 1 } },
    ],
    envelope: {
      curve: [
        { part: hinge, swing: 108.2, hours: 512, share: 0.62, beyondKnee: false },
        { part: valve, swing: [178.1, 184.4], hours: 314, share: 1, beyondKnee: true },
      ],
      knee: found ? 108.2 : null,
      atKnee: { id: 'wren', swing: 180, price: 28500, mass: 95 },
      forAll: found ? { id: 'bittern', swing: 320, price: 46000, mass: 260 } : null,
    },
    hours: { [hinge]: 512, [valve]: 314, [cover]: 45 },
    threeAxis: [cover],
    ranking: found
      ? [
          {
            measure: 'coverage',
            best: 1,
            stays: ['rowan+wren/tilt-along-y', 'alder+bittern/tilt-along-x'],
            drops: [],
          },
          {
            measure: 'price',
            best: 112100,
            stays: ['rowan+wren/tilt-along-y'],
            drops: ['alder+bittern/tilt-along-x'],
          },
        ]
      : [],
    runnersUp: found
      ? [
          {
            id: 'alder+bittern/tilt-along-x',
            lostOn: 'price',
            gives: [{ measure: 'coverage', winner: [0.62, 0.93], other: 1 }],
          },
        ]
      : [],
    singleLimits: outcome === 'none' ? [{ check: 'swing' as const, lets: 3 }] : [],
    otherWay: null,
    nearestMisses: ['alder+wren/tilt-along-y'],
    ...fixtureArguments(hinge, valve, found),
    features: FIXTURE_FEATURES,
    stability: [{ answer: 'tools.longest', at: 180, low: 150, high: 214, givenUp: [] }],
    unknowns: [
      {
        answer: `parts[${hinge}].depthSide`,
        decides: true,
        ask: 'you',
        checks: ['reach-low', 'tool-length'],
      },
      { answer: 'rotaries[bittern].payload.level', decides: false, ask: 'seller', checks: ['payload'] },
      { answer: 'shop.floorRating', decides: false, ask: 'you', checks: [] },
    ],
    cautions: ['tilting-table-drops', 'combustible-chips', 'lock-out'],
    moneyFormulas: MONEY_FORMULAS,
  };
}
