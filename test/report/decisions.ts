import type { Decision } from '../../src/rules/decision.ts';
import { fixtureDecision } from './fixture.ts';

/** A name with all the marks that can break a table, a page or a chart. */
export const hostile = (plain: string): string =>
  `${plain} | \`a\` <script>x()</script> </details> **b** [l](//x) "q" #35; 7`;

/** A name with what can steer a terminal, and with more marks. */
export const steering = (plain: string): string =>
  `${plain} \u202e\u001b[31m\u0007\n# h\t~~s~~ _u_ www.z.com a@b.co &amp; %% \u2066 \ud800 $x$ \\ 8`;

/** The decisions that every test of the report goes through, by what they are. */
export const DECISIONS: readonly (readonly [what: string, decision: Decision])[] = [
  ['one that recommends', fixtureDecision()],
  ['one shown in inches', fixtureDecision({ shownIn: 'inch' })],
  ['one where nothing passes', fixtureDecision({ outcome: 'none' })],
  ['one that is open', fixtureDecision({ outcome: 'open' })],
  ['one with names full of marks', fixtureDecision({ name: hostile })],
  ['one with names that steer', fixtureDecision({ name: steering })],
];
