import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, paragraph } from '../blocks/block.ts';
import { say, strong, verdictSign, words } from '../blocks/inline.ts';

export const title = (_decision: Decision): readonly Block[] => [
  heading(1, say`Five-axis arrangement: a decision with its numbers`),
];

/** What this paper is and how it is read. */
export function preamble(_decision: Decision): readonly Block[] {
  return [
    heading(2, say`How to read this paper`),
    paragraph(
      say`This paper says which machine, which rotary and which options suit the work that was described, why, and on
        which numbers. Every number in it stands in the decision file too, beside its formula and its source. A check
        compares what is needed with what there is: it ${verdictSign('holds')}, it ${verdictSign('holds if')}
        something ordinary is done, it ${verdictSign('fails')}, or it is ${verdictSign('open')} because a value that
        is not known decides.`,
    ),
    paragraph(
      say`${strong([words('It is an estimate and no approval.')])} Rigging, floors, electrics, guarding and fire
        protection are decided by local code and the licensed trades.`,
    ),
  ];
}
