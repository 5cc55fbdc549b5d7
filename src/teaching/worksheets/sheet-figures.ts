import type { Scene } from '../../drawing/scene.ts';
import type { LengthUnits } from '../../quantities/kinds.ts';
import { type Block, heading } from '../../report/blocks/block.ts';
import { say, words } from '../../report/blocks/inline.ts';
import { arrangementAt } from '../../report/checks-at.ts';
import { EXPLAINED_BY, FIGURE_KINDS, type FigureKind } from '../../report/figures/explained-by.ts';
import { decide } from '../../rules/decide.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Explained, rootOf } from '../explained.ts';
import type { ReadyLesson } from '../lessons/run-lesson.ts';
import { arrangementId, type Sheet } from './sheet.ts';

const drawn = new WeakMap<Sheet, Explained | null>();

/**
 * Pictures of what the steps are about, to scale, each once. Of their measures only those are left that are given: answers and
 * values of the catalog, never what a check needs or has. Drawn once for a sheet: its Markdown and its files show the same.
 */
export function figureSection(sheet: Sheet): Explained | null {
  const section = drawn.has(sheet) ? (drawn.get(sheet) ?? null) : drawnSection(sheet);
  drawn.set(sheet, section);
  return section;
}

function drawnSection({ ready, options }: Sheet): Explained | null {
  const { lesson } = ready;
  const wanted = new Map<string, { readonly kind: FigureKind; readonly on: string }>();
  for (const [index, { asked }] of lesson.steps.entries()) {
    const kind = 'check' in asked ? EXPLAINED_BY[asked.check] : undefined;
    const on = arrangementId(ready, index);
    if (kind !== undefined) wanted.set(`${kind} ${on}`, { kind, on });
  }
  const decisions = new Map<string, Decision>();
  const scenes = [...wanted.values()].flatMap(({ kind, on }): readonly Scene[] => {
    const decision = decisions.get(on) ?? decisionOn(ready, on, options.units);
    decisions.set(on, decision);
    const place = arrangementAt(decision, on);
    const figure = place === undefined ? null : FIGURE_KINDS[kind](decision, place);
    return figure === null ? [] : [figure.scene];
  });
  if (scenes.length === 0) return null;
  const blocks: readonly Block[] = [
    heading(2, say`Drawn to scale`),
    ...scenes.map((scene, index): Block => {
      const given = withGivenOnly(scene, index);
      return { kind: 'figure', figure: { scene: given, words: [words(given.description)] } };
    }),
  ];
  return { root: rootOf(ready.decision, null), blocks };
}

/** With every check of one arrangement written out, which a lesson does not need: pictures are laid out by them. */
function decisionOn({ lesson, decision }: ReadyLesson, on: string, shownIn: LengthUnits): Decision {
  const { catalog } = decision.inputs;
  const arrangement = decision.arrangements.find(({ id }) => id === on);
  const rows = {
    ...catalog,
    machines: catalog.machines.filter(({ id }) => id === arrangement?.machine),
    rotaries: catalog.rotaries.filter(({ id }) => id === arrangement?.rotary),
  };
  return decide(lesson.answers, rows, { all: true, flips: [], shownIn });
}

function withGivenOnly(scene: Scene, index: number): Scene {
  const panels = scene.panels.map((panel) => ({
    ...panel,
    // behind the dash stands what gives way
    title: panel.title.replace(/ – .*$/, ''),
    dimensions: panel.dimensions
      .filter(({ path }) => path[0] === 'inputs')
      // which of them is tight would say what gives way
      .map((each) => ({ ...each, tight: false })),
  }));
  return {
    ...scene,
    name: `${scene.name}-${index + 1}`,
    description: `To scale: ${panels.map(({ title }) => title).join('; ')}.`,
    panels,
    // there it stands why a way does not pass
    notDrawn: [],
  };
}
