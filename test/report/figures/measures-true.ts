import type { Scene } from '../../../src/drawing/scene.ts';
import { findAt, placeText } from '../../../src/report/blocks/path.ts';
import { jsonReport } from '../../../src/report/index.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { expectClose } from '../../close-to.ts';

/** Written once for each decision: it takes a while. */
const WRITTEN = new WeakMap<Decision, Decision>();

function jsonOf(decision: Decision): Decision {
  const written: Decision = WRITTEN.get(decision) ?? JSON.parse(jsonReport(decision));
  WRITTEN.set(decision, written);
  return written;
}

/** Every measure is as long as the number of the decision's JSON at its path, and says that number. */
export function expectTrueMeasures(scene: Scene, decision: Decision): void {
  const json = jsonOf(decision);
  for (const { path, text, from, to, side } of scene.panels.flatMap(({ dimensions }) => dimensions)) {
    const value = findAt(json, path);
    if (typeof value !== 'number') throw new TypeError(`${placeText(path)} is ${value}`);
    const axis = side === 'above' || side === 'below' ? 0 : 1;
    expectClose(to[axis] - from[axis], value, { absolute: 1e-9 * (1 + Math.abs(value)) });
    const said = Number(/-?\d[\d.]*/.exec(text.replace(/[\u202f\s](?=\d)/g, ''))?.[0]);
    expectClose(said, value, { absolute: Math.max(0.051, Math.abs(value) * 0.0006) });
  }
}

/** Words of a scene that say nothing, or speak of what is undefined. */
export const faultsInWords = (scene: Scene): readonly string[] =>
  wordsIn(scene).filter((text) => text.trim() === '' || /undefined|NaN|null/.test(text));

/** The words of a scene, all of them. */
const wordsIn = ({ title, description, panels, notDrawn }: Scene): readonly string[] => [
  title,
  description,
  ...notDrawn,
  ...panels.flatMap((panel) => [
    panel.title,
    ...panel.marks.map(({ name }) => name),
    ...panel.dimensions.flatMap(({ name, text }) => [name, text]),
    ...panel.labels.map(({ text }) => text),
  ]),
];
