/** The tip boxes of all approaches, in one place. */
export { aroundBox } from './around-box.ts';
export { sideBox } from './side-box.ts';
export { simultaneousBox } from './simultaneous-box.ts';
export { slantBox } from './slant-box.ts';
export { topBox } from './top-box.ts';
export { undercutBox } from './undercut-box.ts';
export { unionBox } from './union-box.ts';
