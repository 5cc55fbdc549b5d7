import { describe, expect, test } from 'vitest';
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
  const shop = SHOP_REPLIES.map((reply) => (/^(90|180|20)$/.test(reply) ? `${reply} mm` : reply));
  return go(begun(), units, 'none', ...block, ...shop);
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
    expect(inch.kind === 'question' && inch.current?.words).toBe('88.9 x 50.8 x 50.8 mm (3.5 x 2 x 2 in)');
  });
});
