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
        and every number. This paper carries them too: the second line works out every number in it again, and names
        each that does not come out as it is printed.`,
    ),
    {
      kind: 'command',
      line: say`fivesides decide answers.yaml --catalog FOLDER --format markdown${units}`,
    },
    { kind: 'command', line: say`fivesides verify PAPER.md` },
    details(say`The answers as a file`, [{ kind: 'answers-file' }]),
    details(say`What every number in this paper was made from`, [{ kind: 'inputs-file' }]),
  ];
}
