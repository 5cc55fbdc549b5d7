export { displayText } from './display-text.ts';
export { jsonReport } from './exports/json.ts';
export { markdownReport } from './exports/markdown.ts';
export { textReport } from './exports/text.ts';
