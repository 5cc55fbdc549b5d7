// A process of its own: makes the market, decides if it is told to, and says what that took, as one line of JSON.
// node scripts/run.mjs bench/market/alone.ts [decide]
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { DECIDING } from './deciding.ts';
import { demoCatalog } from './growth.ts';
import { marketOf } from './market.ts';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

const held = (): number => {
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
};

const { answers, catalog } = marketOf(demoCatalog(), DECIDING.size);
const before = held();
const start = process.cpuUsage();
const result = process.argv[2] === 'decide' ? DECIDING.decide(answers, catalog) : null;
const spent = process.cpuUsage(start);
const ms = (spent.user + spent.system) / 1000;
const kept = held() - before;
// what was decided is held until here
console.log(
  JSON.stringify({ ms, kept, most: process.resourceUsage().maxRSS * 1024, decided: result !== null }),
);
