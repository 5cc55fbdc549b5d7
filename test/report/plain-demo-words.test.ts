import { describe, expect, it } from 'vitest';
import { markdownReport } from '../../src/report/index.ts';
import { demoDecisions } from './demo-decisions.ts';

const PAPERS = new Map(demoDecisions().map(([shop, decision]) => [shop, markdownReport(decision)]));
const paper = (shop: string): string => PAPERS.get(shop) ?? '';

describe('A paper of a demo shop', () => {
  it('has one eye bolt carry all of a rotary with one lifting point', () => {
    expect(paper('shop-school-workshop')).toContain('rated for all of the 42 kg, not for a share');
    expect(paper('shop')).not.toContain('not for a share');
  });

  it('sends the reader to the building where the doorway is tightest', () => {
    expect(paper('shop-school-workshop')).toContain('30 mm to spare. Measure the building again');
    expect(paper('shop-hand-lifting')).toContain('The seller has to confirm the numbers behind it');
  });

  it('does not call a mass solid where only a share of the block is material', () => {
    expect(paper('shop-hand-lifting')).not.toContain('as if it were solid');
  });

  it('asks no seller of a mill that is owned already', () => {
    expect(paper('shop-hand-lifting')).not.toContain('To the seller of **Medlar**');
    expect(paper('shop-hand-lifting')).toContain('it is owned already');
  });

  it('says one axis, not one axes', () => {
    expect(paper('shop-school-workshop')).toContain('1 axis');
    expect(paper('shop-school-workshop')).not.toMatch(/(?<![\d.-])1 axes/);
  });
});
