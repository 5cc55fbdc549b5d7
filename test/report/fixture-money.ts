import type { Money, SensitivityRow } from '../../src/rules/decision.ts';

const row = (times: number, gain: number): SensitivityRow => ({
  times,
  gain,
  payback: gain > 0 ? 119100 / gain : null,
  netPresentValue: [gain * 4 - 119100, null],
});

/** Made by hand: one family that gains, one that stays as it is; a payback that may never come. */
export const fixtureMoney = (hinge: string, valve: string): Money => ({
  families: [
    {
      part: hinge,
      setupsNow: 4,
      setupsThen: 2,
      hoursNow: 512,
      hoursThen: 301.5,
      hoursSaved: 210.5,
      gain: 14735,
    },
    { part: valve, setupsNow: 3, setupsThen: 3, hoursNow: 314, hoursThen: 314, hoursSaved: 0, gain: 0 },
  ],
  hoursSaved: 210.5,
  savings: 14735,
  swapHours: 24.25,
  swapCost: 1697.5,
  running: { items: [{ item: 'yearly-costs', price: 2500 }], total: 2500 },
  gain: [10537.5, 14735],
  capital: {
    items: [
      { item: 'machine', which: 'rowan', price: 72000 },
      { item: 'rotary', which: 'wren', price: 28500 },
      { item: 'clearance', which: 'lowered-table', price: 3200 },
      { item: 'axis-drives', which: '2', price: 8400 },
      { item: 'feature', which: 'somethingNew', price: null },
      { item: 'rigging', which: '', price: 4000 },
      { item: 'training', which: '', price: [0, 3000] },
    ],
    total: [116100, 119100],
    camPost: 'in-training',
  },
  payback: [8.1, null],
  netPresentValue: -52310.25,
  residual: 30000,
  terms: { shopRate: 70, years: 5, interest: 0.06, ranked: true },
  sensitivity: {
    shopRate: [row(0.75, -120.5), row(1, 10537.5), row(1.25, 14221.5)],
    quantity: [row(0.9, 9800), row(1.1, 11275)],
  },
  breakEven: { shopRate: 131.4, hours: [388.5, 412] },
});
