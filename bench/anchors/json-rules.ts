import { type Almanac, Engine } from 'json-rules-engine';
import { ANCHOR_CHECKS } from './checks.ts';
import type { Anchor, Counts } from './counts.ts';
import { type Case, casesOf, type Machine, type Part, type Rotary, type World } from './world.ts';

/** As its documentation has it: a rule a check, need and have as facts that are worked out from other facts. */
export const documented: Anchor = (world) => {
  const engine = new Engine();
  for (const { id, need, have } of ANCHOR_CHECKS) {
    engine.addFact(`${id} need`, async (_, almanac: Almanac) =>
      need(await almanac.factValue<Part>('part'), await almanac.factValue<Rotary>('rotary')),
    );
    engine.addFact(`${id} have`, async (_, almanac: Almanac) =>
      have(
        await almanac.factValue<Rotary>('rotary'),
        await almanac.factValue<Machine>('machine'),
        await almanac.factValue<boolean>('alongX'),
        await almanac.factValue<number>('raised'),
      ),
    );
    engine.addRule({
      conditions: {
        all: [{ fact: `${id} need`, operator: 'lessThanInclusive', value: { fact: `${id} have` } }],
      },
      event: { type: id },
    });
  }
  return () => countedBy(engine, world, (of) => ({ ...of }));
};

/** With an operator of its own for each check: the whole case is one fact. */
export const customOperators: Anchor = (world) => {
  const engine = new Engine();
  for (const { id, need, have } of ANCHOR_CHECKS) {
    engine.addOperator<Case, boolean>(
      id,
      (of, expected) =>
        need(of.part, of.rotary) <= have(of.rotary, of.machine, of.alongX, of.raised) === expected,
    );
    engine.addRule({
      conditions: { all: [{ fact: 'case', operator: id, value: true }] },
      event: { type: id },
    });
  }
  return () => countedBy(engine, world, (of) => ({ case: of }));
};

async function countedBy(
  engine: Engine,
  world: World,
  facts: (of: Case) => Record<string, unknown>,
): Promise<Counts> {
  let held = 0;
  let passed = 0;
  for (const each of casesOf(world)) {
    const { events } = await engine.run(facts(each));
    held += events.length;
    if (events.length === ANCHOR_CHECKS.length) passed += 1;
  }
  return { held, passed };
}
