import fc from 'fast-check';
import { expect, test } from 'vitest';
import { named } from '../../../src/ui/keys/key.ts';
import { edited, NOTHING_TYPED, type TextField } from '../../../src/ui/keys/text-field.ts';
import { graphemes } from '../../../src/ui/look/cells.ts';

const typed = (text: string): TextField =>
  graphemes(text).reduce(
    (field, sign) => edited(field, { kind: 'text', text: sign }) ?? field,
    NOTHING_TYPED,
  );

test('what is typed goes in where the caret is', () => {
  const middle = edited(edited(typed('13'), named('left')) ?? NOTHING_TYPED, { kind: 'text', text: '2' });
  expect(middle).toEqual({ text: '123', caret: 2 });
});

test('what is seen as one character is taken back as one', () => {
  expect(edited(typed('軸e\u0301'), named('backspace'))).toEqual({ text: '軸', caret: 1 });
  expect(edited(typed('😀'), named('backspace'))).toEqual(NOTHING_TYPED);
});

test('with nothing typed, keys that edit are left to others', () => {
  expect(edited(NOTHING_TYPED, named('left'))).toBeNull();
  expect(edited(NOTHING_TYPED, named('backspace'))).toEqual(NOTHING_TYPED);
});

test('more than fits is not taken', () => {
  const full = typed('9'.repeat(500));
  expect(edited(full, { kind: 'text', text: '9' })).toEqual(full);
  expect(edited(NOTHING_TYPED, { kind: 'paste', text: '9'.repeat(501) })).toEqual(NOTHING_TYPED);
});

test('the caret stays inside the text, whatever is pressed', () => {
  const keys = fc.oneof(
    fc
      .constantFrom(...(['left', 'right', 'home', 'end', 'backspace', 'delete', 'ctrl-u'] as const))
      .map(named),
    fc.constantFrom('1', '軸', 'e\u0301', '😀').map((text) => ({ kind: 'text', text }) as const),
  );
  fc.assert(
    fc.property(fc.array(keys, { maxLength: 40 }), (all) => {
      const field = all.reduce((now, key) => edited(now, key) ?? now, NOTHING_TYPED);
      expect(field.caret).toBeGreaterThanOrEqual(0);
      expect(field.caret).toBeLessThanOrEqual(graphemes(field.text).length);
    }),
  );
});
