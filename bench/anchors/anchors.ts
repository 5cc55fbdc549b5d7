import type { Bench, Figure } from '../figure.ts';
import { busyMs, interleaved } from '../interleaved.ts';
import { ANCHOR_CHECKS } from './checks.ts';
import type { Counts } from './counts.ts';
import { ANCHORS, type AnchorName } from './index.ts';
import { casesIn, type World, worldOf } from './world.ts';

/** About 10^5 checks: what takes milliseconds a check can be measured on it. */
const SMALL = { machines: 6, rotaries: 4, parts: 40 };
/** So many that ranking the parts, once a rotary, does not show. */
const LARGE = { machines: 400, rotaries: 20, parts: 40 };
/** A shorter run is repeated until it has lasted so long. */
const LEAST_MS = 40;
/** What takes seconds is measured so often at most. */
const MOST_ROUNDS = 7;

const SLOW = ['documented', 'customOperators', 'everyTraceWithText', 'compiledLogic', 'everyTrace'] as const;
const FAST = ['flatLoop', 'rankedMasks'] as const;
/** Our engine's judge, and its tables. */
type Own = 'ownJudge' | 'ownTables';

/** What it was, as a ratio to plain TypeScript, where the promises were made: how much slower, or how much faster. */
const KNOWN: Readonly<Record<(typeof SLOW)[number] | (typeof FAST)[number], number>> = {
  documented: 782,
  customOperators: 165,
  everyTraceWithText: 169,
  compiledLogic: 56,
  everyTrace: 4.7,
  flatLoop: 7,
  rankedMasks: 70,
};

/** Why a figure is another one than was known, as far as that could be seen. */
const WHY: Readonly<Partial<Record<AnchorName, string>>> = {
  // measured apart, by the same expressions; the functions that `build` gives were read
  compiledLogic:
    'version 5.0.7 compiles to plain JavaScript (2.3e+7 checks/s); what was known (2.3e+6) lies between its interpreter without and with its optimization (1.4e+6, 4.5e+6)',
};

const TITLES: Readonly<Record<AnchorName, string>> = {
  documented: 'json-rules-engine, documented style',
  customOperators: 'json-rules-engine, custom operators',
  everyTraceWithText: 'TypeScript, a trace with text for every check',
  compiledLogic: 'json-logic-engine, compiled',
  everyTrace: 'TypeScript, a trace for every check',
  lazyTraces: 'plain TypeScript, a trace only when somebody looks',
  flatLoop: 'flat loop, every margin kept',
  rankedMasks: 'needs ranked, verdicts as bit masks',
  ownJudge: 'the judge of the engine',
  ownTables: 'the tables of the engine',
};

/**
 * The same twelve checks on a made-up world, judged in ways that anybody knows: what the speed of the engine is held
 * against. Every way has to come to the same number of verdicts that hold, or nothing is reported.
 */
export const anchors: Bench = {
  name: 'anchors',
  run: async ({ rounds }) => {
    const taken = Math.min(rounds, MOST_ROUNDS);
    const small = await ratesOn(worldOf(SMALL), [...SLOW, 'ownJudge', 'lazyTraces'], taken);
    const large = await ratesOn(worldOf(LARGE), [...FAST, 'ownTables', 'lazyTraces'], taken);
    const plain = small.lazyTraces;
    return [
      rate('lazyTraces', plain, null),
      ...SLOW.map((name) => rate(name, small[name], { how: 'slower', ratio: plain / small[name] })),
      ...FAST.map((name) =>
        rate(name, large[name], { how: 'faster', ratio: large[name] / large.lazyTraces }),
      ),
      ...PROMISED.map(([than, atLeast]) => faster('ownJudge', small.ownJudge, than, small[than], atLeast)),
      // tables pay on many arrangements: the ratios of both worlds to the same plain loop are held against each other
      ...PROMISED.map(([than, atLeast]) =>
        faster(
          'ownTables',
          large.ownTables,
          than,
          (small[than] * large.lazyTraces) / small.lazyTraces,
          atLeast,
        ),
      ),
      faster('ownTables', large.ownTables, 'flatLoop', large.flatLoop, 5),
      faster('ownTables', large.ownTables, 'rankedMasks', large.rankedMasks, null),
    ];
  },
};

/** Checks a second of each way, in time on a core, medians of rounds in turn. */
async function ratesOn<Name extends AnchorName>(
  world: World,
  names: readonly Name[],
  rounds: number,
): Promise<Readonly<Record<Name, number>>> {
  const counts = new Map<Name, Counts>();
  const things = names.map((name) => {
    const run = ANCHORS[name](world);
    const timed = async (): Promise<number> => {
      let runs = 0;
      const start = busyMs();
      do {
        counts.set(name, await run());
        runs += 1;
      } while (busyMs() - start < LEAST_MS);
      return (busyMs() - start) / runs;
    };
    return [name, timed] as const;
  });
  const times = await interleaved(rounds, Object.fromEntries(things) as Record<Name, () => Promise<number>>);
  const different = new Set([...counts.values()].map(({ held, passed }) => `${held} and ${passed}`));
  if (different.size !== 1) throw new Error(`the verdicts are not the same: ${[...different].join('; ')}`);
  const checks = casesIn(world) * ANCHOR_CHECKS.length;
  return Object.fromEntries(names.map((name) => [name, (1000 * checks) / times[name]])) as Record<
    Name,
    number
  >;
}

/** How many times as fast the engine was promised to be. */
const PROMISED = [
  ['documented', 300],
  ['customOperators', 80],
  ['compiledLogic', 25],
] as const;

/** A way of our own held against another on the same world. */
function faster(
  own: Own,
  perSecond: number,
  than: AnchorName,
  theirs: number,
  atLeast: number | null,
): Figure {
  return {
    requirement: null,
    what: `${TITLES[own]}: faster than ${TITLES[than]}`,
    value: perSecond / theirs,
    unit: '×',
    atMost: null,
    ...(atLeast === null ? {} : { atLeast }),
    beside: `${perSecond.toExponential(1)} checks/s against ${theirs.toExponential(1)}`,
  };
}

function rate(
  name: Exclude<AnchorName, Own>,
  perSecond: number,
  against: { readonly how: 'slower' | 'faster'; readonly ratio: number } | null,
): Figure {
  const beside = `${perSecond.toExponential(1)} checks/s`;
  if (against === null || name === 'lazyTraces')
    return {
      requirement: null,
      what: TITLES[name],
      value: perSecond,
      unit: 'checks/s',
      atMost: null,
      beside: '',
    };
  const known = KNOWN[name];
  return {
    requirement: null,
    what: `${TITLES[name]}: ${against.how} than plain TypeScript`,
    value: against.ratio,
    unit: '×',
    atLeast: known / 2,
    atMost: known * 2,
    beside: [beside, `${known} × was known`, WHY[name]].filter((each) => each !== undefined).join('; '),
  };
}
