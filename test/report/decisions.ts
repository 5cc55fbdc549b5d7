import type { Decision } from '../../src/rules/decision.ts';
import { fixtureDecision } from './fixture.ts';

/** A name with everything in it that can break a table, a page, a chart or a terminal. */
export const hostile = (plain: string): string =>
  `${plain} | \`a\` <script>alert(1)</script> </details> \u202e\u001b[31m\u0007\n# h ~~s~~ **b** _u_ [l](http://x.y) www.z.com a@b.co &amp; "q" #35; {x} %% 7 \ud800`;

/** The decisions that every test of the report goes through, by what they are. */
export const DECISIONS: readonly (readonly [what: string, decision: Decision])[] = [
  ['one that recommends', fixtureDecision()],
  ['one shown in inches', fixtureDecision({ shownIn: 'inch' })],
  ['one where nothing passes', fixtureDecision({ outcome: 'none' })],
  ['one that is open', fixtureDecision({ outcome: 'open' })],
  ['one with hostile names', fixtureDecision({ name: hostile })],
];
