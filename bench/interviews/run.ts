// node scripts/run.mjs bench/interviews/run.ts [shops] [first seed] [orders]: questions that simulated interviews need, by order.
// Each interview is a line on stderr; with --from FILES the table is made of such lines instead.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Catalog } from '../../src/catalog/catalog.ts';
import { readCatalog } from '../../src/catalog/read.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { interviewedByTheProgram } from './by-the-program.ts';
import { fixedOrder } from './fixed-order.ts';
import { type Interview, interviewed } from './interview.ts';
import { simulatedShop } from './shops.ts';
import { interviewTable } from './table.ts';
import { withHoles } from './with-holes.ts';

type Interviewing = (truth: Answers, catalog: Catalog, seed: number) => Interview;

const ORDERS: Readonly<Record<string, Interviewing>> = {
  fixed: (truth, catalog) => interviewed(truth, catalog, fixedOrder),
  adaptive: interviewedByTheProgram,
  holes: (truth, catalog, seed) => interviewedByTheProgram(withHoles(truth, seed), catalog),
};

/** What the promise compares. */
const PROMISED = ['fixed', 'adaptive'];

type Lines = Map<string, Map<number, Interview>>;

function put(lines: Lines, name: string, seed: number, interview: Interview): void {
  lines.set(name, (lines.get(name) ?? new Map()).set(seed, interview));
}

function linesFrom(files: readonly string[]): Lines {
  const lines: Lines = new Map();
  for (const file of files)
    for (const [, seed, name = '', interview = ''] of readFileSync(file, 'utf8').matchAll(
      /^(\d+) (\w+): (\{.*\})$/gm,
    ))
      put(lines, name, Number(seed), JSON.parse(interview));
  return lines;
}

function linesOf(shops: number, first: number, names: readonly string[]): Lines {
  const catalog = readCatalog([resolve('catalog-demo')]);
  if (!catalog.ok) throw new Error('the demo catalog cannot be read');
  const lines: Lines = new Map();
  for (let seed = first; seed < first + shops; seed += 1) {
    const truth = simulatedShop(seed);
    for (const name of names) {
      const interview = ORDERS[name]?.(truth, catalog.value, seed);
      if (interview === undefined) throw new Error(`there is no order ${name}`);
      put(lines, name, seed, interview);
      console.error(`${seed} ${name}: ${JSON.stringify(interview)}`);
    }
  }
  return lines;
}

const [how, ...rest] = process.argv.slice(2);
const [shops = 200, first = 1] = [how, rest[0]].filter((each) => each !== undefined).map(Number);
const names = rest.length > 1 ? rest.slice(1) : PROMISED;
console.log(interviewTable(how === '--from' ? linesFrom(rest) : linesOf(shops, first, names)));
