import type { Scene } from '../../drawing/scene.ts';
import { sceneSvg } from '../../drawing/svg/scene-svg.ts';
import type { Decision } from '../../rules/decision.ts';
import type { Block } from '../blocks/block.ts';
import type { Figure } from '../figures/figure.ts';
import { lengthText } from '../figures/length-text.ts';
import { wholeReport } from '../whole-report.ts';

/** A picture of a report as a file in the folder of its figures. */
export interface FigureFile {
  readonly name: string;
  readonly text: string;
}

export const figureFile = ({ name }: Pick<Scene, 'name'>): string => `${name}.svg`;

/** The folder of the figures of a paper, beside it. Example: figuresFolder('report.md') → 'report-figures'. */
export const figuresFolder = (paper: string): string => `${paper.replace(/\.(md|markdown)$/i, '')}-figures`;

/** Every picture of the whole report as SVG, the same bytes for the same decision. */
export const figureFiles = (decision: Decision): readonly FigureFile[] =>
  figureFilesOf(wholeReport(decision), decision);

/** Every picture among blocks as SVG. */
export const figureFilesOf = (blocks: readonly Block[], decision: Decision): readonly FigureFile[] =>
  figuresIn(blocks).map(({ scene }) => ({
    name: figureFile(scene),
    text: sceneSvg(scene, { lengthText: lengthText(decision) }),
  }));

const figuresIn = (blocks: readonly Block[]): readonly Figure[] =>
  blocks.flatMap((block) =>
    block.kind === 'figure' ? [block.figure] : block.kind === 'details' ? figuresIn(block.blocks) : [],
  );
