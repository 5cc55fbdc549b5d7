import type { Interview } from './interview.ts';

/** By the order: an interview with each shop, by its seed. Shops that not every order has are left out. */
export function interviewTable(found: ReadonlyMap<string, ReadonlyMap<number, Interview>>): string {
  const all = [...found.values()];
  const seeds = [...(all[0]?.keys() ?? [])].filter((seed) => all.every((each) => each.has(seed)));
  const of = (name: string): readonly Interview[] =>
    seeds.flatMap((seed) => found.get(name)?.get(seed) ?? []);
  const [first = ''] = found.keys();
  const base = of(found.has('fixed') ? 'fixed' : first);
  const outcomes = ['recommended', 'none', 'open'].map(
    (each) => `${base.filter(({ outcome }) => outcome === each).length} ${each}`,
  );
  return [
    '| order | shops | right | until proven, mean | median | until three are left, mean | median | never asked |',
    '| --- | --- | --- | --- | --- | --- | --- | --- |',
    ...[...found.keys()]
      .sort((a, b) => Number(b === 'fixed') - Number(a === 'fixed'))
      .map((name) => rowOf(name, of(name), base)),
    '',
    `${outcomes.join(', ')}.`,
  ].join('\n');
}

function rowOf(name: string, all: readonly Interview[], base: readonly Interview[]): string {
  const cells = [
    ...[name, all.length, all.filter(({ isRight }) => isRight).length],
    ...(['untilProven', 'untilThree'] as const).flatMap((key) => {
      const numbers = all.map((each) => each[key]);
      return [against(mean(numbers), mean(base.map((each) => each[key]))), median(numbers)];
    }),
    mean(all.map(({ skipped }) => skipped)).toFixed(1),
  ];
  return `| ${cells.join(' | ')} |`;
}

const against = (number: number, its: number): string =>
  `${number.toFixed(1)} (${number <= its ? '−' : '+'}${Math.abs((1 - number / its) * 100).toFixed(0)} %)`;

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, each) => sum + each, 0) / Math.max(1, numbers.length);

function median(numbers: readonly number[]): number {
  const sorted = numbers.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
