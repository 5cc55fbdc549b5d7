/** The greatest of 1, 2, 5, 10, 20, 50… that is no more than a length. Example: roundLength(137) → 100. */
export function roundLength(atMost: number): number {
  const power = 10 ** Math.floor(Math.log10(atMost));
  const step = [5, 2, 1].find((each) => each * power <= atMost) ?? 1;
  return step * power;
}
