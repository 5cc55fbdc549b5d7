import { describe, expect, test } from 'vitest';
import { CHECK_IDS } from '../../src/rules/checks/ids.ts';
import { explanationFigures, explanationLines } from '../../src/teaching/exports.ts';
import { TOPICS } from '../../src/teaching/topics/index.ts';
import { CHECK_LESSONS } from '../../src/teaching/words/check-lessons.ts';

const topicOf = (id: string) => {
  const found = TOPICS.find((each) => each.kind === 'check' && each.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

describe.each(CHECK_IDS.map((id) => [id, CHECK_LESSONS[id].sketch] as const))('%s', (id, sketch) => {
  const explained = topicOf(id).explain();
  const figure = explained.blocks.find(({ kind }) => kind === 'figure');

  test('is drawn, or says why not', () => {
    expect(figure === undefined).toBe(sketch.as === 'none');
    expect(explanationFigures(explained).map(({ name }) => name)).toEqual(
      sketch.as === 'none' ? [] : [`explain-${id}.svg`],
    );
  });

  test.runIf(sketch.as !== 'none')('measures what is needed and what there is, as long as they are', () => {
    if (figure?.kind !== 'figure') throw new Error('no figure');
    const { panels, toScale } = figure.figure.scene;
    const own = panels.flatMap(({ dimensions }) => dimensions).filter(({ path }) => path[0] === 'worked');
    // a picture of the report measures the numbers of its own decision, which are those of the example
    if (sketch.as !== 'picture')
      expect(own.map(({ path }) => path.at(-1)).toSorted()).toEqual(['have', 'need']);
    const { need, have } = explained.root.worked as { need: number; have: number };
    const lengths = own.map(
      ({ path, from, to }) => [path.at(-1), Math.hypot(to[0] - from[0], to[1] - from[1])] as const,
    );
    for (const [what, length] of lengths) {
      const value = Math.abs(what === 'need' ? need : have);
      const scale = toScale ? 1 : 120 / Math.max(Math.abs(need), Math.abs(have));
      expect(Math.abs(length - value * scale)).toBeLessThan(1e-6 * Math.max(1, value));
    }
  });

  test.runIf(sketch.as === 'picture')('is a picture of the report, with the numbers of the example', () => {
    if (figure?.kind !== 'figure') throw new Error('no figure');
    expect(figure.figure.scene.toScale).toBe(true);
  });
});

test('it is drawn on the screen, in plain characters too', () => {
  const explained = topicOf('tilt-swing').explain();
  const lines = explanationLines(explained, { width: 100, ascii: true, drawn: true });
  expect(lines.join('\n')).toMatch(/farthest corner, needed: 50 mm/);
  expect(lines.join('\n')).toMatch(/^[\x20-\x7e\n]+$/);
});
