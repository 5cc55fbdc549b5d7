import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import type { Answers } from '../../src/questions/answers.ts';
import { askingOf } from '../../src/rules/asking/asking.ts';
import type { Bench, Figure } from '../figure.ts';
import { busyMs, inMs, interleaved, quantile } from '../interleaved.ts';
import { DECIDING, MARKET_SIZE } from './deciding.ts';
import { decided, demoCatalog } from './growth.ts';
import { type Market, marketOf } from './market.ts';

const MB = 1024 * 1024;
/** What takes seconds is measured so often at most. */
const MOST_ROUNDS = 5;
const MOST_MINUTES = 10;

/** What a full decision, a changed answer, memory and the first decision of a process take on one large market. */
export const atSize: Bench = {
  name: 'market',
  run: async ({ rounds }) => {
    const market = marketOf(demoCatalog(), DECIDING.size);
    const taken = Math.min(rounds, MOST_ROUNDS);
    let round = 0;
    const times = await interleaved(taken, {
      full: () => decided(market, busyMs),
      changed: () => {
        round += 1;
        return changed(market, round);
      },
    });
    const next = nextQuestion(market);
    const alone = await inTurn(taken);
    return [
      figure('full decision', times.full, 'ms', 1000, times.full),
      figure('one changed answer', times.changed, 'ms', 500, times.changed),
      figure('next question', next, 'ms', 1000, next),
      figure('first decision of a process / a later one', alone.first / times.full, '×', null, alone.first),
      figure('most memory beyond the catalog', alone.most / MB, 'MB', 128, null),
      figure('memory that a decision holds', alone.kept / MB, 'MB', null, null),
    ];
  },
};

/** Milliseconds on a core of a decision on the same catalog after another one, with the first part a hair deeper each time. */
async function changed({ answers, catalog }: Market, round: number): Promise<number> {
  const [part, ...parts] = answers.parts;
  if (part === undefined) throw new Error('the shop has no parts');
  const deeper = { ...part, depthSide: Number(part.depthSide) + round / 100 };
  const start = busyMs();
  DECIDING.decide({ ...answers, parts: [deeper, ...parts] }, catalog);
  return busyMs() - start;
}

/** Milliseconds until it is known what to ask, while five answers about building and money are open. Measured once. */
function nextQuestion({ answers, catalog }: Market): number {
  const early: Answers = {
    ...answers,
    shop: { ...answers.shop, ceiling: 'unknown', floorRating: 'unknown' },
    money: { ...answers.money, budget: 'unknown', years: 'unknown', shopRate: 'unknown' },
  };
  const start = busyMs();
  askingOf(early, { ...catalog });
  return busyMs() - start;
}

interface Alone {
  readonly ms: number;
  readonly kept: number;
  readonly most: number;
}

/** Processes of their own, with and without a decision in turn: what the decision adds is what lies between them. */
async function inTurn(
  rounds: number,
): Promise<{ readonly first: number; readonly kept: number; readonly most: number }> {
  const [without, deciding]: [Alone[], Alone[]] = [[], []];
  for (let round = 0; round < rounds; round += 1) {
    without.push(await alone());
    deciding.push(await alone('decide'));
  }
  const median = (runs: readonly Alone[], of: keyof Alone): number =>
    quantile(
      runs.map((run) => run[of]),
      0.5,
    );
  return {
    first: median(deciding, 'ms'),
    kept: median(deciding, 'kept') - median(without, 'kept'),
    most: median(deciding, 'most') - median(without, 'most'),
  };
}

async function alone(...args: readonly string[]): Promise<Alone> {
  const command = ['scripts/run.mjs', 'bench/market/alone.ts', ...args];
  const { stdout } = await promisify(execFile)(process.execPath, command, { timeout: MOST_MINUTES * 60_000 });
  return JSON.parse(stdout) as Alone;
}

/** The promises are about market size: at a smaller one nothing is held against them. */
function figure(
  what: string,
  value: number,
  unit: Figure['unit'],
  promised: number | null,
  time: number | null,
): Figure {
  const { machines, rotaries, families } = DECIDING.size;
  const isLarge =
    machines >= MARKET_SIZE.machines && rotaries >= MARKET_SIZE.rotaries && families >= MARKET_SIZE.families;
  const size = `${machines} machines × ${rotaries} rotaries, ${families} families; ${DECIDING.name}`;
  return {
    requirement: null,
    what: `market: ${what}`,
    value,
    unit,
    atMost: isLarge ? promised : null,
    beside: time === null ? size : `${inMs(time)}; ${size}`,
  };
}
