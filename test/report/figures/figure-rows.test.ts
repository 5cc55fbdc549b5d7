import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { circle } from '../../../src/drawing/scene.ts';
import { say } from '../../../src/report/blocks/inline.ts';
import { textOf } from '../../../src/report/blocks/inline-text.ts';
import { textLines } from '../../../src/report/exports/text-blocks.ts';
import { elevation } from '../../../src/report/figures/elevation.ts';
import { explanations } from '../../../src/report/figures/explanations.ts';
import { figureRows } from '../../../src/report/figures/figure-rows.ts';
import { picturedArrangement } from '../../../src/report/figures/pictured.ts';
import { tablePlan } from '../../../src/report/figures/table-plan.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';
import { dotsIn, extent } from '../../drawing/dots-in.ts';
import { panelOf, sceneOf } from '../../drawing/scenes.ts';
import { demoDecisions } from '../demo-decisions.ts';

const SHOP = new Map(demoDecisions()).get('shop') as Decision;
const AT = picturedArrangement(SHOP);
const FIGURES =
  AT === undefined ? [] : [elevation(SHOP, AT), tablePlan(SHOP, AT)].filter((each) => each !== null);
const LOOK = { width: 120, ascii: false } as const;

describe('requirement 25: a figure on a screen', () => {
  it('is round where it is round', () => {
    const figure = { scene: sceneOf(panelOf([circle('tool', [0, 0], 90)])), words: say`A circle` };
    const dots = dotsIn(figureRows(figure, SHOP, LOOK));
    expectClose(extent(dots.map(([x]) => x)), extent(dots.map(([, y]) => y)), { absolute: 2 });
  });

  it.each([70, 80, 119, 120, 200])(
    'takes at most 72 columns, and all there are, in a window of %d',
    (width) => {
      for (const ascii of [true, false]) {
        for (const figure of FIGURES) {
          const rows = figureRows(figure, SHOP, { width, ascii });
          expect(Math.max(...rows.map((row) => stringWidth(row)))).toBeLessThanOrEqual(Math.min(width, 72));
          expect(rows.join('\n')).toMatch(/one dot is/);
          if (ascii) expect(rows.join('\n')).toMatch(/^[ -~\n]*$/);
        }
      }
    },
  );

  it('is left out where there is too little room, and said in words', () => {
    for (const figure of FIGURES) {
      expect(figureRows(figure, SHOP, { width: 69, ascii: false })).toEqual([]);
      const said = textLines([{ kind: 'figure', figure }], SHOP, { width: 60, ascii: false, drawn: true });
      expect(said.join(' ').replace(/\s+/g, ' ').trim()).toBe(
        textOf(figure.words, SHOP, LOOK).replace(/\s+/g, ' '),
      );
    }
  });

  it('is said in words where lines are read aloud', () => {
    for (const figure of FIGURES) {
      const lines = textLines([{ kind: 'figure', figure }], SHOP, LOOK).join('\n');
      expect(lines).not.toMatch(/[\u2500-\u25ff\u2800-\u28ff]/);
    }
  });

  it('has the numbers of its measures in the list beside it', () => {
    for (const figure of FIGURES) {
      const text = figureRows(figure, SHOP, LOOK).join('\n');
      for (const { name, text: number } of figure.scene.panels.flatMap(({ dimensions }) => dimensions)) {
        expect(text).toContain(`${name}: ${number}`);
      }
    }
  });
});

describe('What explains a check', () => {
  const drawn = explanations(SHOP, AT?.arrangement.id ?? '', LOOK);
  const pathOf = (check: string, part: string | null) => [
    ...(AT?.path ?? []),
    'checks',
    AT?.arrangement.checks.findIndex((each) => each.check === check && each.part === part) ?? -1,
  ];

  it('is the panel in which it is measured, once', () => {
    const path = pathOf('index-clear', 'Sampling valve body');
    const rows = drawn(path).join('\n');
    expect(rows).toContain('tilting under the tool, margin');
    expect(rows).not.toContain('reach above the work');
    expect(drawn(path)).toEqual([]);
  });

  it('is nothing for a check that no picture measures', () => {
    expect(drawn(pathOf('lift', null))).toEqual([]);
  });
});
