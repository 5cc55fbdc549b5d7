import { describe, expect, it } from 'vitest';
import type { Rotary } from '../../src/catalog/catalog.ts';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { checkRows } from '../../src/report/arrangement-rows.ts';
import { cautions } from '../../src/report/sections/cautions.ts';
import { classes, routes } from '../../src/report/sections/classes.ts';
import { misses, stoppers } from '../../src/report/sections/misses.ts';
import { toDo } from '../../src/report/sections/to-do.ts';
import { worthFinding } from '../../src/report/worth-finding.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from '../rules/example-shop.ts';
import { blockText } from './section-text.ts';

interface Given {
  readonly part?: Partial<Part>;
  readonly shop?: Partial<Answers['shop']>;
  readonly machines?: readonly Partial<typeof EXAMPLE_MACHINE>[];
  readonly rotaries?: readonly Partial<Rotary>[];
}

const decided = ({ part = {}, shop = {}, machines = [{}], rotaries = [{}] }: Given): Decision =>
  decide(
    {
      ...EXAMPLE_ANSWERS,
      parts: [{ ...EXAMPLE_PART, tolerance: 0.5, ...part }],
      shop: { ...EXAMPLE_ANSWERS.shop, ...shop },
    },
    {
      ...EXAMPLE_CATALOG,
      machines: machines.map((each) => ({ ...EXAMPLE_MACHINE, ...each })),
      rotaries: rotaries.map((each) => ({ ...EXAMPLE_ROTARY, ...each })),
    },
    { all: true },
  );

describe('A kind of rotary, and a way to five axes, on which nothing passes', () => {
  const decision = decided({ part: { depthSide: 700 } });
  const text = `${blockText(classes(decision), decision)}\n${blockText(routes(decision), decision)}`;

  it('is not called possible', () => {
    expect(decision.outcome).toBe('none');
    expect(decision.classes.map(({ finding }) => finding)).toContain('possible');
    expect(decision.route.routes.map(({ finding }) => finding)).toContain('possible');
    expect(text).not.toContain('possible');
    expect(text).toContain('a mill bought together with a rotary: not ruled out, but nothing passes.');
  });
});

describe('What can help where the tilt does not reach', () => {
  const single = { id: 'one', name: 'One', class: 'single-axis', tilt: null } as const;
  const helps = (given: Given): string => {
    const decision = decided({ shop: { floorRating: 'unknown' }, ...given });
    return blockText(misses(decision), decision);
  };

  it('is no larger rotary where an axis is missing', () => {
    const text = helps({ rotaries: [single, { tilt: [-20, 40] }] });
    expect(text).toContain('short by 1 axis. What can help: another class of rotary.');
    expect(text).not.toContain('larger rotary');
  });

  it('is one that tilts further, where there is one', () => {
    const part = { approaches: ['top', { undercut: 112 }] } as const;
    const further = { id: 'far', name: 'Far', tilt: [-20, 120], swing: 20 } as const;
    expect(helps({ part, rotaries: [{}, further] })).toContain('a rotary that tilts further');
    expect(helps({ part })).not.toContain('a rotary that tilts further');
  });
});

describe('A check of the building', () => {
  const decision = decided({ shop: { floorRating: 5 } });
  const [first] = decision.arrangements;

  it('is not named with a part', () => {
    const names = checkRows(decision, first?.id ?? '', false).map(({ name }) => name);
    expect(names).toContain('Floor load');
    expect(names).toContain('Swing (Example)');
    const text = blockText(misses(decision), decision);
    expect(text).toContain('floor load ✗ fails');
  });
});

describe('What to begin with where nothing passes', () => {
  it('lists each check with how much it stops alone', () => {
    const decision = decided({
      shop: { ceiling: 2600, doorway: { width: 3000, height: 2700 } },
      machines: [
        { footprint: [2400, 2100, 2100], shipping: [2300, 2800, 2900] },
        { id: 'b', name: 'B' },
      ],
    });
    const text = blockText(stoppers(decision), decision);
    expect(text).toMatch(
      /begin with (doorway|ceiling) \(alone it stops \d+\) or (doorway|ceiling) \(alone it stops \d+\)\./,
    );
  });
});

describe('The cautions', () => {
  it('speak of those who are still learning', () => {
    const decision = decided({});
    expect(blockText(cautions(decision), decision)).toContain(
      'Whoever is still learning works on it only under',
    );
  });
});

describe('What dropped an arrangement', () => {
  it('is told first, also where it dropped at parts that need not be held', () => {
    const large = { ...EXAMPLE_PART, name: 'Large', size: [300, 250, 90], tolerance: 0.5 } as const;
    const decision = decide(
      {
        ...EXAMPLE_ANSWERS,
        parts: [large, { ...large, name: 'Larger' }],
        shop: { ...EXAMPLE_ANSWERS.shop, doorway: { width: 1900, height: 3000 } },
      },
      EXAMPLE_CATALOG,
      { all: true },
    );
    const [first] = decision.arrangements;
    expect(first?.dropped).toMatchObject({ stage: 'envelope', check: 'swing' });
    const text = blockText(misses(decision), decision);
    expect(text).toMatch(/dropped at work envelope; swing at Large/);
    expect(text).toContain('doorway ✗ fails');
  });
});

describe('The answers most worth finding out', () => {
  it('are measured only where they can be', () => {
    const decision = decided({
      part: { motion: 'unknown', holding: { ...EXAMPLE_PART.holding, height: 'unknown' } },
    });
    const found = worthFinding({
      ...decision,
      unknowns: [
        { answer: 'parts[Example].motion', ask: 'you', decides: true, checks: [] },
        { answer: 'parts[Example].holding.height', ask: 'you', decides: true, checks: [] },
        { answer: 'work.swap', ask: 'you', decides: true, checks: [] },
      ],
    });
    expect(found.map(({ whom }) => whom)).toEqual([
      'whoever makes the part knows',
      'you can measure it or look it up',
      'you can settle that yourself',
    ]);
  });
});

describe('The numbers of a supply', () => {
  it('say what they count where they are no power', () => {
    const decision = decided({ shop: { power: { kVA: 40, volts: 480, phases: 3 } } });
    const [first] = decision.arrangements;
    const row = checkRows(decision, first?.id ?? '', false).find(({ name }) =>
      name.startsWith('Power supply'),
    );
    expect(row?.name).toBe('Power supply (how far the voltage is off)');
    expect(row?.verdict).toBe('holds if');
  });
});

describe('What has to be done', () => {
  it('keeps cases with an amount apart', () => {
    const part = { ...EXAMPLE_PART, tolerance: 0.08 } as const;
    const decision = decide(
      { ...EXAMPLE_ANSWERS, parts: [part, { ...part, name: 'Second' }] },
      EXAMPLE_CATALOG,
      { all: true },
    );
    expect(blockText(toDo(decision), decision)).toMatch(
      /For Example \(accuracy between faces\), error that is left [\d.]+ mm; for Second \(accuracy between faces\), error/,
    );
  });
});

describe('What can help', () => {
  it('is another machine where one check asks for a larger and another for a smaller one', () => {
    const slots = { count: 5, width: 18, pitch: 80, center: true, along: 'x' } as const;
    const table = { size: [915, 460], height: 850, load: 90, slots } as const;
    const larger = { ...table, load: 20 };
    const decision = decided({
      shop: { doorway: { width: 1900, height: 3000 } },
      machines: [{ table }, { table: larger, id: 'b', name: 'B', travel: [900, 600, 600], price: 99000 }],
    });
    const text = blockText(misses(decision), decision);
    expect(text).toContain('What can help: another machine, a lighter fixture');
    expect(text).not.toContain('a larger machine');
  });
});
