/** Under which name an exercise is kept. Example: exerciseName('swing', 17, 2) → 'practice swing 17 level 2'. */
export const exerciseName = (about: string, seed: number, level: number): string =>
  `practice ${about} ${seed} level ${level}`;

/** What such a name says; null: it is no exercise. */
export function exerciseNamed(name: string): { readonly lesson: string; readonly seed: number } | null {
  const [, about, seed, level] = /^practice ([\w-]+) (\d+) level (\d)$/.exec(name) ?? [];
  return about === undefined ? null : { lesson: `practice ${about} level ${level}`, seed: Number(seed) };
}
