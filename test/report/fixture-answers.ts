import type { Answers, Part } from '../../src/questions/answers.ts';
import { blankAnswers, blankPart } from '../../src/questions/blank-answers.ts';

function part(name: string, given: Partial<Part>): Part {
  return { ...blankPart(name), shape: 'block', motion: 'positional', ...given };
}

/** What a small shop said; three families, several things not known. */
export function fixtureAnswers(name: (plain: string) => string): Answers {
  const blank = blankAnswers('EUR');
  return {
    ...blank,
    parts: [
      part(name('Lock gate hinge'), {
        size: [90, 60, 55],
        material: 'aluminum-wrought',
        mass: 0.8,
        approaches: ['top', 'sides', { slant: 35 }],
        depthTop: 30,
        depthSide: 'unknown',
        holding: { by: 'fixture', diameter: 100, height: 40, mass: 4 },
        cut: 'heavy',
        must: true,
      }),
      part(name('Valve body'), {
        size: [140, [110, 120], 90],
        material: 'titanium',
        approaches: ['top', { undercut: 'unknown' }],
        cut: { diameter: 16, teeth: 4, ap: 8, ae: 4, fz: 0.06, vc: 60, interrupted: true },
        drill: { diameter: 12, feed: 0.2, offset: 40 },
      }),
      part(name('Cover'), { size: [200, 150, 12], material: 'brass', approaches: ['top'] }),
    ],
    tools: { shortest: 90, longest: 180, largestCutter: 20 },
    work: { ...blank.work, visesWanted: 2, vise: { width: 152, length: 450, height: 75 }, swap: 'keyed' },
    money: { ...blank.money, budget: 180000 },
    assume: { approach: 30 },
  };
}
