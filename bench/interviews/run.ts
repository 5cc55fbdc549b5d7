// node scripts/run.mjs bench/interviews/run.ts [shops] [first seed]: questions that simulated interviews need, by order.
import { resolve } from 'node:path';
import { readCatalog } from '../../src/catalog/read.ts';
import { fixedOrder } from './fixed-order.ts';
import { type Interview, interviewed, type Order } from './interview.ts';
import { narrowingOrder } from './narrowing-order.ts';
import { simulatedShop } from './shops.ts';

const ORDERS: Readonly<Record<string, Order>> = { fixed: fixedOrder, narrowing: narrowingOrder };

const [shops = 200, first = 1] = process.argv.slice(2).map(Number);
const catalog = readCatalog([resolve('catalog-demo')]);
if (!catalog.ok) throw new Error('the demo catalog cannot be read');

const found = new Map<string, Interview[]>(Object.keys(ORDERS).map((name) => [name, []]));
for (let seed = first; seed < first + shops; seed += 1) {
  const truth = simulatedShop(seed);
  for (const [name, order] of Object.entries(ORDERS)) {
    const interview = interviewed(truth, catalog.value, order);
    found.get(name)?.push(interview);
    console.error(`${seed} ${name}: ${JSON.stringify(interview)}`);
  }
}

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, each) => sum + each, 0) / Math.max(1, numbers.length);
const median = (numbers: readonly number[]): number => {
  const sorted = numbers.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
};
const shown = (number: number): string => number.toFixed(1);
const fixed = found.get('fixed') ?? [];
const against = (number: number, its: number): string =>
  `${shown(number)} (${number <= its ? '−' : '+'}${Math.abs((1 - number / its) * 100).toFixed(0)} %)`;

console.log(
  '| order | shops | right | until proven, mean | median | until three are left, mean | median | never asked |',
);
console.log('| --- | --- | --- | --- | --- | --- | --- | --- |');
for (const [name, all] of found) {
  const of = (key: 'untilProven' | 'untilThree' | 'skipped') => mean(all.map((each) => each[key]));
  const its = (key: 'untilProven' | 'untilThree') => mean(fixed.map((each) => each[key]));
  const right = all.filter(({ isRight }) => isRight).length;
  const middle = (key: 'untilProven' | 'untilThree') => median(all.map((each) => each[key]));
  const cells = [
    ...[name, all.length, right],
    ...[against(of('untilProven'), its('untilProven')), middle('untilProven')],
    ...[against(of('untilThree'), its('untilThree')), middle('untilThree')],
    shown(of('skipped')),
  ];
  console.log(`| ${cells.join(' | ')} |`);
}
const outcomes = fixed.map(({ outcome }) => outcome);
console.log(
  `\n${['recommended', 'none', 'open'].map((each) => `${outcomes.filter((one) => one === each).length} ${each}`).join(', ')}.`,
);
