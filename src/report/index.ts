export { type FigureFile, figureFiles, figuresFolder } from './exports/figure-files.ts';
export { INPUTS_FENCE } from './exports/inputs-json.ts';
export { jsonReport } from './exports/json.ts';
export { markdownReport } from './exports/markdown.ts';
export { paperInFile } from './exports/papers.ts';
export { answerReport, textReport } from './exports/text.ts';
export type { TextLook } from './exports/text-blocks.ts';
