import { describe, expect, test } from 'vitest';
import { bareUnit } from '../../src/quantities/units.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import { readReply } from '../../src/questions/read-reply.ts';
import { answers, begun, blockReplies, go, SHOP_REPLIES, screen } from './talk.ts';

const MM = ['3 1/2 x 2.5 x 2 in', '1.25 in', '0.002 in', '4 in', '8.8 lb'];
const INCH = ['3 1/2 x 2.5 x 2', '1.25', '0.002', '4', '8.8'];

function interview(units: string, [size, depth, tolerance, wide, heavy]: readonly string[]) {
  const block = [...blockReplies('Lock gate hinge')];
  block[2] = size ?? '';
  block[8] = depth ?? '';
  block[9] = `20 mm`;
  block[11] = tolerance ?? '';
  block[14] = wide ?? '';
  block[15] = '40 mm';
  block[16] = heavy ?? '';
  return go(begun(), units, 'none', ...block, ...SHOP_REPLIES);
}

describe('inches and millimeters', () => {
  test('give the same answers, to the last digit', () => {
    const [mm, inch] = [interview('mm', MM), interview('inch', INCH)];
    expect(answers(inch)).toEqual(answers(mm));
    expect(answers(mm).parts[0]).toMatchObject({
      size: [88.9, 63.5, 50.8],
      depthTop: 31.75,
      tolerance: 0.0508,
    });
  });

  test('change nothing that is answered when the units are changed', () => {
    const talk = interview('mm', MM);
    const changed = go(talk, { type: 'find', text: 'units' }, 'inches');
    expect(answers(changed)).toEqual(answers(talk));
  });

  test('an answer is echoed in both, and shown in what was chosen', () => {
    const talk = go(begun(), 'mm', 'none', 'Hinge', 'block', '3 1/2 x 2 x 2 in');
    expect(screen(talk).accepted?.words).toBe('88.9 x 50.8 x 50.8 mm (3.5 x 2 x 2 in)');
    const mass = go(talk, 'brass', '2 lb');
    expect(screen(mass).accepted?.words).toBe('0.907 kg (2 lb)');
    const now = screen(go(mass, { type: 'find', text: 'size' }));
    expect(now.kind === 'question' && now.current?.words).toBe('88.9 x 50.8 x 50.8 mm');
    const inch = screen(go(mass, { type: 'find', text: 'units' }, 'inch', { type: 'find', text: 'size' }));
    expect(inch.kind === 'question' && inch.current?.words).toBe('3.5 x 2 x 2 in (88.9 x 50.8 x 50.8 mm)');
    const back = go(mass, { type: 'find', text: 'units' }, 'inch', { type: 'find', text: 'mass' }, '2 lb');
    expect(screen(back).accepted?.words).toBe('2 lb (0.907 kg)');
  });
});

describe('an interview in inches', () => {
  const shown = (units: string, question: string) => {
    const parts = [...blockReplies('Hinge')];
    const talk = go(begun(), units, 'none', ...parts);
    const now = screen(go(talk, { type: 'find', text: question }));
    if (now.kind !== 'question' || now.input.kind !== 'quantity') throw new Error(now.kind);
    return { bare: now.input.bare, hint: now.hint };
  };

  test('asks with examples in inches', () => {
    expect(shown('inch', 'size').hint).toContain('3 1/2 x 2 1/2 x 2 in');
    expect(shown('inch', 'size').hint).not.toContain('mm');
    expect(shown('mm', 'size').hint).toContain('90 x 60 x 55 mm');
  });

  test('asks for feeds in in/min and cutting speeds in ft/min, and takes what is written out', () => {
    expect(readReply({ kind: 'quantity', of: 'feed', limits: {} }, '80', INCHES)).toEqual(ok(2032));
    expect(readReply({ kind: 'quantity', of: 'feed', limits: {} }, '2032 mm/min', INCHES)).toEqual(ok(2032));
    expect(readReply({ kind: 'quantity', of: 'cuttingSpeed', limits: {} }, '500', INCHES)).toEqual(ok(152.4));
    expect(readReply({ kind: 'quantity', of: 'cuttingSpeed', limits: {} }, '150 m/min', INCHES)).toEqual(
      ok(150),
    );
    expect(bareUnit('feed', 'inch').symbol).toBe('in/min');
    expect(bareUnit('cuttingSpeed', 'inch').symbol).toBe('ft/min');
  });

  test('no example of any question is metric alone', () => {
    for (const { id, hint, hintInch } of QUESTIONS) {
      if (id === 'units') continue;
      expect(hintInch, id).not.toMatch(/\d (mm|kg|m\/min)\b/);
      expect(hint === '', id).toBe(hintInch === '');
    }
  });
});

const INCHES = { units: 'inch', offer: { machines: [] } } as const;
const ok = (value: number) => ({ ok: true, value });
