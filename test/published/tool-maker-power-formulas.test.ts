/**
 * A cutting-tool maker's technical pages on cutting power in turning and face milling, with worked problems
 * (name withheld). PRINTED. The pages take π as 3.14.
 */
import { describe, it } from 'vitest';
import { cuttingPower } from '../../src/mechanics/forces/cutting-power.ts';
import { spindleSpeed } from '../../src/mechanics/forces/spindle-speed.ts';
import { tableFeed } from '../../src/mechanics/forces/table-feed.ts';
import { expectClose } from '../close-to.ts';

/** Three printed digits. */
const PRINTED = { percent: 0.5 };

describe('problem on face milling: cutter of 250 mm, 12 teeth, 80 m/min, 2 × 80 mm, 280 mm/min', () => {
  it('turns at 101.91 rev/min', () => {
    // 3.14 for π: 0.05 %
    expectClose(spindleSpeed(80, 250), 101.91, { percent: 0.06 });
  });

  it('feeds 280 mm/min at 0.228 mm a tooth', () => {
    expectClose(tableFeed(0.228, 12, spindleSpeed(80, 250)), 280, PRINTED);
  });

  it('takes 1.68 kW at 1800 N/mm² and an efficiency of 0.8', () => {
    expectClose(cuttingPower(2, 80, 280, 1800) / 0.8, 1.68, PRINTED);
  });
});

describe('problem on turning (M-4): 3 mm deep, 0.2 mm a revolution, 120 m/min', () => {
  it('takes 4.65 kW at 3100 N/mm² and an efficiency of 0.8', () => {
    // the cutting speed in mm/min moves the chip's cross section, as the feed rate moves that of a milling cut
    expectClose(cuttingPower(3, 0.2, 120_000, 3100) / 0.8, 4.65, PRINTED);
  });
});
