// Holds the tables of a market against the plain judge on small random markets: node scripts/run.mjs fast-against-plain FROM TO
import { smallMarket } from '../bench/market/small-market.ts';
import { readCatalog } from '../src/catalog/read.ts';
import { standingOf } from '../src/rules/standing.ts';
import { arrangementsHeld, noneHeld } from '../test/rules/fast/arrangements-held.ts';
import { type Held, resultsDiffer, verdictsHeld } from '../test/rules/fast/held-against.ts';

const [from = 1, to = 10_001] = process.argv.slice(2).map(Number);
const demo = readCatalog(['catalog-demo']);
if (!demo.ok) throw new Error('the demo catalog cannot be read');
const held: Held = { counts: {}, differ: [] };
const arrangements = noneHeld();
let results = 0;
for (let seed = from; seed < to; seed += 1) {
  const market = smallMarket(demo.value, seed);
  const before = held.differ.length;
  verdictsHeld(market, held, 6);
  for (const each of held.differ.slice(before)) console.log(`market ${seed}: ${each}`);
  const differed = arrangements.differ.length;
  const plain = standingOf(market.answers, market.catalog);
  arrangementsHeld(market, arrangements, plain.judged);
  for (const each of arrangements.differ.slice(differed)) console.log(`market ${seed}: ${each}`);
  for (const each of resultsDiffer(market, plain)) {
    results += 1;
    console.log(`market ${seed}: ${each}`);
  }
  if (seed % 500 === 0) console.log(`${seed} …`);
}
const verdicts = Object.values(held.counts).flatMap((each) => Object.values(each));
console.log(
  `${to - from} markets, ${verdicts.reduce<number>((sum, each) => sum + (each ?? 0), 0)} verdicts: ` +
    `${held.differ.length} differ; arrangements ${JSON.stringify(arrangements.seen)}: ` +
    `${arrangements.differ.length} differ; ${results} results differ`,
);
process.exitCode = held.differ.length + arrangements.differ.length + results === 0 ? 0 : 1;
