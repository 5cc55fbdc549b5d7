import type { FeatureNeed } from '../../src/rules/decision.ts';

const NONE = { parts: [], savesHours: null, savesMoney: null, sure: true, openOn: [] } as const;

/** Options of the decision made by hand. */
export const FIXTURE_FEATURES: readonly FeatureNeed[] = [
  {
    ...NONE,
    feature: 'spindleProbe',
    need: 'worth having',
    sure: false,
    why: 'saves-at-setups',
    number: 12,
    limit: 0,
    unit: 'mm',
    there: 'offered',
    price: 6800,
    savesHours: [2.4, 4.8],
    savesMoney: [840, 8400],
    source: 'an assumption',
    openOn: ['money.shopRate'],
  },
  {
    ...NONE,
    feature: 'toolCenterPoint',
    need: 'required',
    why: 'all-axes-move',
    number: 512,
    limit: 0,
    unit: 'h',
    there: 'standard',
    price: 0,
    source: 'common practice, no source',
  },
  {
    ...NONE,
    feature: 'camPost',
    need: 'required',
    why: 'tilt-nobody-sees',
    number: 105,
    limit: 0,
    unit: '°',
    there: 'ask',
    price: null,
    source: 'common practice, no source',
  },
];
