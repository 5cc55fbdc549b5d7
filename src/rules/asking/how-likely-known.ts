/**
 * How likely somebody knows an answer when asked, as a share; common practice, no source. What stands on a drawing or can
 * be measured with a tape is known; what is in the papers of the building or in the books seldom.
 */
const KNOWN: readonly (readonly [path: RegExp, share: number])[] = [
  [/\.cut\.|\.contour|\.drill\./, 0.6],
  [/\.holding\.mass$|\.mass$/, 0.7],
  [/\.tolerance$/, 0.8],
  [/^shop\.floorRating$/, 0.3],
  [/^shop\.power|^shop\.air/, 0.7],
  [/^shop\.lifting\..*\.(rigging|slingAngle|slingHeight)$/, 0.6],
  [/^shop\.doorSill$/, 0.6],
  [/^money\.(residual|interest|yearlyCosts|training|rigging)$/, 0.7],
  [/^money\.shopRate$/, 0.9],
];

/** Example: 'shop.floorRating' → 0.3; what is in no row is nearly always known → 0.95. */
export const howLikelyKnown = (path: string): number =>
  KNOWN.find(([pattern]) => pattern.test(path))?.[1] ?? 0.95;
