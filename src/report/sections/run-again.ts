import type { Decision } from '../../rules/decision.ts';
import { type Block, details, heading, paragraph } from '../blocks/block.ts';
import { say } from '../blocks/inline.ts';

/** How anybody comes to the same result again. */
export function runAgain(decision: Decision): readonly Block[] {
  const units = decision.inputs.shownIn === 'inch' ? say` --units inch` : [];
  return [
    heading(2, say`How to run it again`),
    paragraph(
      say`Save the answers below as a file, keep the catalog folder at hand, and run the line below. The same answers and
        the same catalog always give the same result. The decision file (the format “json”) carries answers, catalog
        and every number.`,
    ),
    {
      kind: 'command',
      line: say`fivesides decide answers.yaml --catalog FOLDER --format markdown${units}`,
    },
    details(say`The answers as a file`, [{ kind: 'answers-file' }]),
  ];
}
