import type { Decision } from '../../src/rules/decision.ts';

/** Classes, route and size of the decision made by hand. */
export const fixtureArguments = (
  hinge: string,
  valve: string,
  found: boolean,
): Pick<Decision, 'classes' | 'route' | 'bigger'> => ({
  classes: [
    {
      class: 'trunnion',
      finding: 'possible',
      count: 12,
      passing: [1, 2],
      best: 'alder+bittern/tilt-along-x',
      bestPasses: 'yes',
      for: [
        {
          rule: 'swing-holds',
          side: 'for',
          sure: true,
          number: [178.1, 184.4],
          limit: 320,
          unit: 'mm',
          parts: [],
          source: 'geometry',
          openOn: [],
        },
      ],
      against: [
        {
          rule: 'three-axis-often-heavy',
          side: 'against',
          sure: false,
          number: [0, 1],
          limit: 0.3,
          unit: 'share',
          parts: [hinge, valve],
          source: 'common practice, no source',
          openOn: ['work.threeAxisShare'],
        },
      ],
    },
  ],
  route: {
    routes: [
      {
        route: 'new-mill',
        finding: 'suits',
        count: 80,
        passing: 2,
        best: 'rowan+wren/tilt-along-y',
        bestPasses: 'yes',
        for: [
          {
            rule: 'route-some-pass',
            side: 'for',
            sure: true,
            number: 2,
            limit: 1,
            unit: '',
            parts: [],
            source: 'checks',
            openOn: [],
          },
        ],
        against: [],
      },
    ],
    ownMill: null,
  },
  bigger: found
    ? {
        chosen: { rotary: 'wren', machine: 'rowan', swing: 180, price: 28500, mass: 95, length: 420 },
        coverage: [0.62, 0.93],
        viseStations: 2,
        next: {
          rotary: 'bittern',
          machine: 'alder',
          swing: 320,
          price: 46000,
          mass: 260,
          length: 700,
          addsParts: [valve],
          addsHours: [0, 314],
          addsShare: [0, 0.38],
          morePrice: 17500,
          moreMass: 165,
          moreLength: 280,
          best: 'alder+bittern/tilt-along-x',
          bestPasses: 'yes',
          coverage: 1,
          viseStations: 1,
        },
      }
    : null,
});
