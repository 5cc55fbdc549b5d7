import { describe, expect, test } from 'vitest';
import { longestRoom } from '../../src/catalog/longest-room.ts';
import { FAKE_CATALOG } from './fake-engine.ts';
import { asked, begun, go, screen } from './talk.ts';

const said = (units: string, ...replies: readonly string[]) => {
  const talk = go(begun(), units, 'none', 'Hinge', ...replies);
  return { said: screen(talk).said, asked: asked(talk) };
};

const bare = (title: string) => {
  const now = screen(go(begun(), 'mm', 'none', 'Hinge', { type: 'find', text: title }));
  return now.kind === 'question' && now.input.kind === 'quantity' ? now.input.bare : now.kind;
};

describe('a part that is longer than anything in the catalog', () => {
  test('is taken, with a word on it', () => {
    const after = said('mm', 'block', '60 x 40 x 5000');
    expect(after.said).toContain('5000 mm is longer than every table, travel and swing in the catalog');
    expect(after.said).toContain(`the longest is ${longestRoom(FAKE_CATALOG)} mm`);
    expect(after.asked).toBe('material');
    expect(said('inch', 'round', '150').said).toContain('150 in (3810 mm) is longer');
  });

  test('counts by the lower end where it is a range', () => {
    expect(said('mm', 'block', '60 x 40 x 50 to 5000').said).toBeNull();
    expect(said('mm', 'block', '60 x 40 x 4000 to 5000').said).toContain('4000 mm is longer');
    expect(said('mm', 'round', '50 to 5000').said).toBeNull();
  });

  test('is not spoken of where it is not', () => {
    expect(said('mm', 'block', '60 x 40 x 50').said).toBeNull();
    expect(said('mm', 'block', 'not sure').said).toBeNull();
  });
});

describe('a number without a unit', () => {
  test('is money of the catalog, or a share, in words that say how to write it', () => {
    expect(bare('budget')).toBe('EUR');
    expect(bare('interest')).toBe('% or part of 1');
    expect(bare('size')).toBe('mm');
  });
});
