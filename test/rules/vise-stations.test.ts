import { expect, test } from 'vitest';
import { candidatesOf } from '../../src/rules/arranging/candidates.ts';
import { placesOnTable } from '../../src/rules/arranging/place.ts';
import { BARE, groundOf } from '../../src/rules/arranging/setting.ts';
import { mostStations, viseStations } from '../../src/rules/arranging/vise-stations.ts';
import { atHand } from '../../src/rules/kept-work.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';

const SPOTS = 400;

test('wherever on the table the rotary stands, no more vises find room than the most; most often they do somewhere', () => {
  const { world } = atHand(demoAnswers('shop').answers, demoCatalog());
  const reached = candidatesOf(demoCatalog()).flatMap((candidate) =>
    [false, true].flatMap((turned) => {
      const at = (x: number) => groundOf(world, candidate, { ...BARE, place: { x, y: 0, turned } });
      const most = mostStations(at(0));
      if (most === null) return [];
      const { from, to } = placesOnTable(at(0), 'x');
      const counts = Array.from({ length: SPOTS + 1 }, (_, spot) => {
        const stations = viseStations(at(from + ((to - from) * spot) / SPOTS), []);
        return stations?.high ?? 0;
      });
      expect(Math.max(...counts), `${candidate.id}, turned ${turned}`).toBeLessThanOrEqual(most);
      return [Math.max(...counts) === most];
    }),
  );
  expect(reached.filter(Boolean).length).toBeGreaterThan(reached.length * 0.8);
});
