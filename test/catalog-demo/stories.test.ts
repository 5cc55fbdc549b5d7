import { describe, expect, it } from 'vitest';
import { OUTCOME_CODES } from '../../src/commands/outcome-codes.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Arrangement, Decision } from '../../src/rules/decision.ts';
import { demoAnswers, demoCatalog } from './demo.ts';

const catalog = demoCatalog();

/** The whole decision on a demo shop, every arrangement listed. */
function story(name: string): Decision {
  const { answers, shownIn } = demoAnswers(name);
  return decide(answers, catalog, { all: true, shownIn });
}

const passing = (decision: Decision): readonly Arrangement[] =>
  decision.arrangements.filter((each) => each.passes === 'yes');

function recommended(decision: Decision): Arrangement {
  const found = decision.arrangements.find(({ id }) => id === decision.recommended);
  if (found === undefined) throw new Error(`nothing recommended: ${decision.outcome}`);
  return found;
}

const droppedBy = (decision: Decision): readonly string[] =>
  decision.stages.flatMap(({ dropped }) => Object.keys(dropped));

const tableArea = (id: string): number => {
  const size = catalog.machines.find((row) => row.id === id)?.table?.size;
  return size === undefined ? Number.NaN : Number(size[0]) * Number(size[1]);
};

describe('the shop of the story', () => {
  const decision = story('shop');
  const winner = recommended(decision);

  it('gets a middling mill with a single-support rotary', () => {
    expect(decision.outcome).toBe('recommended');
    expect(OUTCOME_CODES[decision.outcome]).toBe(0);
    expect(winner.id).toBe('alder+lapwing/tilt-along-y');
    expect(winner.class).toBe('single-support');
    expect(winner.measures.viseStations).toBeGreaterThanOrEqual(2);
  });

  it('is not sent to the dearest that would do, nor to the largest mill', () => {
    const prices = passing(decision).map((each) => Number(each.measures.price));
    const areas = passing(decision)
      .map((each) => tableArea(each.machine))
      .filter(Number.isFinite);
    expect(Number(winner.measures.price)).toBeLessThan(Math.max(...prices));
    expect(tableArea(winner.machine)).toBeLessThan(Math.max(...areas));
  });

  it('leaves the kettle plate where it is, and mills the deck plate on three axes', () => {
    expect(winner.parts['Kettle manway plate']).toBe('fails');
    expect(decision.threeAxis).toEqual(['Deck plate']);
    const plate = decision.envelope.curve.find(({ part }) => part === 'Kettle manway plate');
    expect(plate?.beyondKnee).toBe(true);
  });

  it('has families that ask for different classes', () => {
    const holding = (part: string) =>
      new Set(
        decision.arrangements
          .filter((each) => each.parts[part] === 'holds' || each.parts[part] === 'holds if')
          .map((each) => each.class),
      );
    expect(holding('Valve spindle')).toContain('collet-indexer');
    expect(holding('Sampling valve body')).toContain('single-axis');
    expect([...holding('Bow fairlead')].sort()).toEqual(['built-in', 'single-support', 'trunnion']);
  });

  it('sees a level tool: a single axis upright on a mill, and a machine whose tilt axis is level', () => {
    const on = (id: string) => decision.arrangements.filter(({ machine }) => machine === id);
    expect(new Set(on('yew').map((each) => each.class))).toEqual(new Set(['single-axis', 'collet-indexer']));
    expect(on('yew').map((each) => each.parts['Sampling valve body'])).toContain('holds if');
    expect(on('elder').map((each) => each.parts['Bow fairlead'])).toEqual(['holds']);
  });

  it('loses arrangements at every stage, to checks of many kinds', () => {
    expect(droppedBy(decision)).toEqual(
      expect.arrayContaining([
        ...['swing', 'payload'],
        ...['tilt-range', 'brake-tilt'],
        ...['table-footprint', 'table-load', 'column'],
        ...['reach-high', 'axis-drives', 'budget'],
      ]),
    );
  });

  it('loses none to its slots: an adapter plate helps, whatever else stops it', () => {
    expect(droppedBy(decision)).not.toContain('slot-match');
  });

  it('sees tools that cannot stay above the work while it tilts', () => {
    const short = decision.arrangements.flatMap(({ checks }) =>
      checks.filter(({ check, verdict }) => check === 'index-clear' && verdict !== 'holds'),
    );
    expect(short.map(({ verdict }) => verdict)).toEqual(expect.arrayContaining(['holds if', 'fails']));
  });

  it('sees adapter plates and clearance additions among what passes', () => {
    expect(passing(decision).some((each) => each.plates.some(({ why }) => why === 'adapter'))).toBe(true);
    expect(passing(decision).some((each) => each.clearance.length > 0)).toBe(true);
  });
});

describe('the shop with a casting beyond every table', () => {
  const decision = story('shop-nothing-passes');

  it('gets nothing, and hears how near the nearest came', () => {
    expect(decision.outcome).toBe('none');
    expect(OUTCOME_CODES[decision.outcome]).toBe(3);
    expect(decision.recommended).toBeNull();
    expect(passing(decision)).toEqual([]);
    expect(decision.nearestMisses.length).toBeGreaterThan(0);
  });

  it('loses everything to the casting alone', () => {
    const verdicts = new Set(decision.arrangements.map((each) => each.parts['Stern casting']));
    expect([...verdicts]).toEqual(['fails']);
    const bracket = decision.arrangements.map((each) => each.parts['Mooring bracket']);
    expect(bracket).toContain('holds');
  });
});

describe('the shop that keeps its mill', () => {
  const decision = story('shop-own-mill');
  const winner = recommended(decision);

  it('gets a small rotary on it, with the lowered table and an adapter plate', () => {
    expect(decision.outcome).toBe('recommended');
    expect(OUTCOME_CODES[decision.outcome]).toBe(0);
    expect(winner.id).toBe('rowan+plover/tilt-along-x');
    expect(winner.clearance).toEqual(['lowered-table']);
    expect(winner.plates.map(({ why }) => why)).toEqual(['adapter']);
  });

  it('does not pay for the mill again, so that every other mill is dearer', () => {
    expect(winner.prices.find(({ item }) => item === 'machine')?.price).toBe(0);
    const elsewhere = passing(decision).filter(({ machine }) => machine !== 'rowan');
    expect(
      elsewhere.filter(({ measures }) => Number(measures.price) <= Number(winner.measures.price)),
    ).toEqual([]);
  });

  it('is told what the lowered table costs once the rotary is off', () => {
    expect(winner.later?.raised).toBe(75);
  });
});

describe('the shop that is not sure', () => {
  const decision = story('shop-many-unknowns');

  it('is not given a guess', () => {
    expect(decision.outcome).toBe('open');
    expect(OUTCOME_CODES[decision.outcome]).toBe(4);
    expect(decision.recommended).toBeNull();
    expect(decision.contenders.length).toBeGreaterThan(1);
  });

  it('hears which answers decide', () => {
    const deciding = decision.unknowns.filter(({ decides, ask }) => decides && ask === 'you');
    expect(deciding.map(({ answer }) => answer)).toEqual(
      expect.arrayContaining([
        'tools.longest',
        'parts[Pump casing].holding.height',
        'parts[Pump casing].holding.mass',
        'parts[Pump casing].cut',
      ]),
    );
  });
});

describe('the school whose doorway is narrow', () => {
  const decision = story('shop-school-workshop');
  const winner = recommended(decision);

  it('gets the one mill that goes through, on a phase converter, with one axis more', () => {
    expect(OUTCOME_CODES[decision.outcome]).toBe(0);
    expect(winner.id).toBe('sallow+dipper/axis-along-x');
    expect(winner.class).toBe('single-axis');
    const power = winner.checks.find(({ check }) => check === 'power');
    expect([power?.verdict, power?.easing?.measure]).toEqual(['holds if', 'phase-converter']);
    expect(winner.measures.viseStations).toBe(1);
  });

  it('loses every other machine in the building: the doorway lets one through', () => {
    const narrow = (id: string): boolean =>
      decision.arrangements.some(
        ({ machine, checks }) =>
          machine === id && checks.some(({ check, verdict }) => check === 'doorway' && verdict === 'fails'),
      );
    const through = catalog.machines.map(({ id }) => id).filter((id) => !narrow(id));
    expect(through).toEqual(['sallow']);
    expect(decision.stages.find(({ stage }) => stage === 'shop')?.dropped.doorway).toBeGreaterThan(0);
    expect(passing(decision).every(({ machine }) => machine === 'sallow')).toBe(true);
  });

  it('leaves the fan wheel: that mill takes no second axis', () => {
    expect(winner.parts['Fan wheel']).toBe('fails');
    const two = decision.arrangements.filter(
      ({ machine, class: kind }) =>
        machine === 'sallow' && (kind === 'single-support' || kind === 'trunnion'),
    );
    expect(two.length).toBeGreaterThan(0);
    for (const { checks } of two) {
      expect(checks.find(({ check }) => check === 'axis-drives')?.verdict).toBe('fails');
    }
    // the fan wheel is just over a twentieth of the hours
    expect(decision.route.routes.find(({ route }) => route === 'single-axis')?.finding).toBe('possible');
  });
});

describe('the shop that lifts by hand', () => {
  const decision = story('shop-hand-lifting');
  const winner = recommended(decision);

  it('keeps its mill and gets a rotary that nobody has to lift', () => {
    expect(OUTCOME_CODES[decision.outcome]).toBe(0);
    expect(winner.id).toBe('medlar+whinchat/tilt-along-x');
    const lift = winner.checks.find(({ check }) => check === 'lift');
    expect([lift?.verdict, lift?.easing?.measure]).toEqual(['holds if', 'stays-on']);
    expect(winner.lifting?.outcome).toBe('stays-on');
  });

  it('has room for its three-axis work beside it, and loses no hour to lifting', () => {
    expect(decision.threeAxis).toEqual(['Reed rail']);
    expect(winner.measures.viseStations).toBeGreaterThanOrEqual(1);
    expect(winner.measures.swapHours).toBe(0);
  });

  it('loses what would have to come off: two people lift less than any tilting rotary weighs', () => {
    const lost = decision.arrangements.filter(({ dropped }) => dropped?.check === 'lift');
    expect(lost.length).toBeGreaterThan(0);
    for (const { measures, lifting } of lost) {
      expect(measures.viseStations).toBe(0);
      expect(lifting?.outcome).toBe('none');
      expect(Number(lifting?.means[0]?.have)).toBeLessThan(18);
    }
  });
});

describe('a purchase that is recommended pays in the years that are looked at', () => {
  it.each(['shop', 'shop-own-mill', 'shop-school-workshop', 'shop-hand-lifting'])('%s', (name) => {
    const { measures, money } = recommended(story(name));
    expect(Number(measures.netPresentValue)).toBeGreaterThan(0);
    expect(Number(measures.payback)).toBeLessThan(8);
    expect(money).not.toBeNull();
  });
});
