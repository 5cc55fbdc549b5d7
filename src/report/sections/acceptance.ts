import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, paragraph, table } from '../blocks/block.ts';
import { type Inline, number, say, standard, strong, words } from '../blocks/inline.ts';
import { machineAt, rotaryAt, rowNumber } from '../catalog-row.ts';
import { checkNumbers } from '../check-numbers.ts';
import { type ArrangementAt, arrangementAt, ofCoveredParts, worstFirst } from '../checks-at.ts';
import { partName } from '../names.ts';
import { ACCEPTANCE_TESTS, type AcceptanceTest } from '../wording/acceptance.ts';
import { MEASURE_TO_TAKE_WORDS } from '../wording/measures-to-take.ts';

type Line = readonly Inline[];

/** Tests to be written into the order: what each shows and what not, and what this purchase rests on. */
export function acceptance(decision: Decision): readonly Block[] {
  if (decision.outcome === 'none') return [];
  const at = arrangementAt(decision, decision.recommended);
  return [
    heading(2, say`Acceptance tests to ask for`),
    paragraph(
      say`Agree with the sellers before the order: which tests are run where the machine will stand, by whom, with the rotary
        mounted as planned, what counts as passed, and what happens if it is not. No limits are printed here: agree on
        numbers, and let the standard in its current edition say how they are measured.`,
    ),
    table(
      [
        [say`Test`, 'left'],
        [say`What it shows`, 'left'],
        [say`What it does not show`, 'left'],
        [say`For this purchase`, 'left'],
      ],
      ACCEPTANCE_TESTS.map((test) => [
        test.standard === null
          ? [strong([words(test.about)])]
          : say`${strong([standard(test.standard)])}: ${words(test.about)}`,
        [words(test.shows)],
        [words(test.showsNot)],
        at === undefined ? say`once it is known what is bought` : here(decision, at, test.id),
      ]),
    ),
  ];
}

/** The numbers of the decision that the test is about. */
function here(decision: Decision, at: ArrangementAt, test: AcceptanceTest['id']): Line {
  const machine = machineAt(decision, at.arrangement.machine);
  const rotary = rotaryAt(decision, at.arrangement.rotary);
  const turns = rotary ?? machine;
  const keys = rotary === null ? ['builtIn', 'accuracy'] : ['accuracy'];
  switch (test) {
    case 'linear':
      return machine === null
        ? []
        : say`the catalog states ${rowNumber(machine, 'mm', 'positioning')}; ask how that was measured`;
    case 'rotary': {
      if (turns === null) return [];
      const tilts = at.arrangement.class !== 'single-axis' && at.arrangement.class !== 'collet-indexer';
      const tilt = tilts ? say`, tilt axis ${rowNumber(turns, 'arcsec', ...keys, 'tilt')}` : [];
      return say`the catalog states rotary axis ${rowNumber(turns, 'arcsec', ...keys, 'rotary')}${tilt}; ask how that was
        measured`;
    }
    case 'axis':
      return say`no catalog states it: ask the maker of the rotary for a record`;
    case 'together':
      return movesTogether(decision, at)
        ? say`needed: all axes move at once in parts that it holds`
        : say`needed less: the axes stand braked while these parts are cut`;
    case 'own-part':
      return ownPart(decision, at);
  }
}

function movesTogether({ inputs: { answers } }: Decision, { arrangement }: ArrangementAt): boolean {
  return answers.parts.some(
    ({ name, motion }) =>
      arrangement.parts[name] !== 'fails' && arrangement.parts[name] !== undefined && motion !== 'positional',
  );
}

/** The part at which accuracy is tightest. */
function ownPart(decision: Decision, at: ArrangementAt): Line {
  const [first] = worstFirst(ofCoveredParts(at).filter(({ result }) => result.check === 'index-accuracy'));
  if (first === undefined || first.result.part === null) return say`take the part with the closest tolerance`;
  const { need, have } = checkNumbers(first);
  const name = partName(decision, first.result.part, [...first.path, 'part']);
  const { easing } = first.result;
  if (easing === null)
    return say`take ${name}: between faces an error of ${need} is expected, and ${have} is allowed`;
  const left = number([...first.path, 'easing', 'amount'], easing.unit);
  const how = words(MEASURE_TO_TAKE_WORDS[easing.measure].title.toLowerCase());
  return say`take ${name}: between faces an error of ${left} is expected with this: ${how}; ${have} is allowed`;
}
