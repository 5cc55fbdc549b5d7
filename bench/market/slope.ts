/**
 * The exponent by which a time grows: the slope of the straight line through the logarithms, by least squares.
 * Example: slopeOf([{ size: 1, time: 3 }, { size: 2, time: 6 }, { size: 4, time: 12 }]) → 1.
 */
export function slopeOf(points: readonly { readonly size: number; readonly time: number }[]): number {
  if (points.length < 2) throw new RangeError(`A line needs two points, and there are ${points.length}.`);
  const logs = points.map(({ size, time }) => ({ x: Math.log(size), y: Math.log(time) }));
  const mean = (of: (log: { readonly x: number; readonly y: number }) => number): number =>
    logs.reduce((sum, each) => sum + of(each), 0) / logs.length;
  const [x, y] = [mean((log) => log.x), mean((log) => log.y)];
  return mean((log) => (log.x - x) * (log.y - y)) / mean((log) => (log.x - x) ** 2);
}
