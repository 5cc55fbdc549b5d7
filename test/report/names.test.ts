import { describe, expect, it } from 'vitest';
import { textOf } from '../../src/report/blocks/inline-text.ts';
import { leaning } from '../../src/report/leaning.ts';
import { arrangementName } from '../../src/report/names.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { fixtureDecision } from './fixture.ts';

const nameOf = (id: string, decision: Decision = fixtureDecision()): string => {
  const asked = { ...decision, recommended: id };
  return textOf(arrangementName(asked, id, ['recommended']), asked, { ascii: false });
};

describe('The name of an arrangement', () => {
  it.each([
    ['rowan+wren/tilt-along-y', 'Rowan with Wren (tilt axis along Y)'],
    ['alder/built-in', 'Alder (built-in table)'],
    ['alder+bittern/axis-along-x', 'Alder with Bittern (rotary axis along X)'],
  ])('%s is %s', (id, name) => {
    expect(nameOf(id)).toBe(name);
  });

  it.each(['oak+wren/tilt-along-y', 'rowan+heron/tilt-along-y', 'rowan+wren/upside-down', 'rowan', ''])(
    'that names nothing in the catalog is printed as it is: "%s"',
    (id) => {
      expect(nameOf(id)).toBe(id === '' ? '(blank)' : id);
    },
  );

  it('says the ids too where two rows have the same name', () => {
    const decision = fixtureDecision({ name: (plain) => (plain === 'Alder' ? 'Rowan' : plain) });
    expect(nameOf('alder+wren/tilt-along-y', decision)).toBe('Rowan (alder) with Wren (tilt axis along Y)');
  });
});

describe('The lean', () => {
  const [first] = fixtureDecision().arrangements;

  it.each([
    ['tilt-along-x', false, 'door'],
    ['tilt-along-x', true, 'column'],
    ['tilt-along-y', false, 'right'],
    ['tilt-along-y', true, 'left'],
  ] as const)('of %s, turned %s, is to the %s', (mounting, turned, where) => {
    if (first === undefined) throw new Error('the fixture lists no arrangement');
    expect(leaning({ ...first, mounting, turned }, fixtureDecision())).toContain(where);
  });

  it('is not spoken of where nothing tilts', () => {
    if (first === undefined) throw new Error('the fixture lists no arrangement');
    expect(leaning({ ...first, mounting: 'axis-along-x' }, fixtureDecision())).toBeNull();
  });
});
