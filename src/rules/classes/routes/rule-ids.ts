/** The rules of the route to five axes, in the order in which their arguments are read. */
export const ROUTE_RULE_IDS = [
  'no-mill-owned',
  'route-none',
  'one-axis-not-enough',
  'one-axis-must-tilt',
  'one-axis-nearly',
  'one-axis-enough',
  'route-price-over',
  'route-none-passes',
  'route-some-pass',
  'route-covers-part',
  'route-covers',
  'route-dearer',
  'route-cheapest',
] as const;
export type RouteRuleId = (typeof ROUTE_RULE_IDS)[number];
