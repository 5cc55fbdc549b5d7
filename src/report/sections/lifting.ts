import type { Decision } from '../../rules/decision.ts';
import type { LiftingDecision, LiftingMeans } from '../../rules/decision-lifting.ts';
import { type Block, type Cell, heading, list, paragraph, table } from '../blocks/block.ts';
import { type Inline, number, say, verdictSign, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { rotaryAt, rowNumber } from '../catalog-row.ts';
import { arrangementAt } from '../checks-at.ts';
import { LIFTING_CAUTIONS, MEANS_WORDS, NO_MEANS_WORDS } from '../wording/lifting.ts';
import { sentenceCase } from '../wording/sentence-case.ts';

interface LiftingAt {
  readonly lifting: LiftingDecision;
  readonly path: Path;
}

/** Lifting of the recommended rotary; undefined where there is none to be lifted. */
function liftingAt(decision: Decision): LiftingAt | undefined {
  const at = arrangementAt(decision, decision.recommended);
  const lifting = at?.arrangement.lifting;
  return at === undefined || lifting == null ? undefined : { lifting, path: [...at.path, 'lifting'] };
}

/** Every means of the shop with its numbers, which is chosen, and what to keep in mind. */
export function lifting(decision: Decision): readonly Block[] {
  const at = liftingAt(decision);
  if (at === undefined) return [];
  const plates = arrangementAt(decision, decision.recommended)?.arrangement.plates.length ?? 0;
  const kinds = new Set(at.lifting.means.map(({ by }) => by));
  const cautions = [
    ...(['hand', 'forklift', 'hoist'] as const).flatMap((by) => (kinds.has(by) ? LIFTING_CAUTIONS[by] : [])),
    ...LIFTING_CAUTIONS.always,
  ];
  return [
    heading(2, say`Lifting it on and off`),
    paragraph(
      say`${words(plates === 0 ? 'The rotary weighs' : 'With the plates under it the rotary weighs')} ${number([...at.path, 'mass'], 'kg')}. Lifts a year, on or off:
        ${number([...at.path, 'swaps'], '')}. ${choice(at)}`,
    ),
    ...meansTable(at),
    ...slings(at),
    ...onePoint(decision, at),
    list(cautions.map((caution) => [words(caution)])),
  ];
}

/** The choice in a sentence, for a reader in a hurry. */
export function liftingInShort(decision: Decision): readonly Block[] {
  const at = liftingAt(decision);
  return at === undefined ? [] : [paragraph(say`Lifting it on and off: ${choice(at)}`)];
}

function choice({ lifting: { outcome, chosen, means }, path }: LiftingAt): readonly Inline[] {
  if (outcome !== 'chosen') return [words(NO_MEANS_WORDS[outcome])];
  const by = chosen === null ? undefined : means[chosen]?.by;
  if (chosen === null || by === undefined) return [];
  const at = [...path, 'means', chosen];
  return say`Best of what there is and suffices: ${words(MEANS_WORDS[by])}, for up to ${number([...at, 'have'], 'kg')}.`;
}

function meansTable({ lifting: { means }, path }: LiftingAt): readonly Block[] {
  if (means.length === 0) return [];
  return [
    table(
      [
        [say`Means`, 'left'],
        [say`Has to lift`, 'right'],
        [say`Lifts`, 'right'],
        [say`Hook needed`, 'right'],
        [say`Hook`, 'right'],
        [say`Verdict`, 'left'],
      ],
      means.map((each, index) => meansRow(each, [...path, 'means', index])),
    ),
  ];
}

function meansRow({ by, sling, people, loadCenter, verdict }: LiftingMeans, at: Path): readonly Cell[] {
  const name = words(sentenceCase(MEANS_WORDS[by]));
  const detail =
    people !== null
      ? say`, people: ${number([...at, 'people'], '')}`
      : loadCenter !== null
        ? say`, load center ${number([...at, 'loadCenter'], 'mm')}`
        : [];
  return [
    [name, ...detail],
    [number([...at, 'need'], 'kg')],
    [number([...at, 'have'], 'kg')],
    sling === null ? [] : [number([...at, 'sling', 'hookNeed'], 'mm')],
    sling === null ? [] : [number([...at, 'sling', 'hookHave'], 'mm')],
    [verdictSign(verdict)],
  ];
}

/** Where the rotary is lifted at one point, no second leg shares the weight, whatever sling the hoist has. */
function onePoint(decision: Decision, { lifting: { means }, path }: LiftingAt): readonly Block[] {
  const rotary = rotaryAt(
    decision,
    arrangementAt(decision, decision.recommended)?.arrangement.rotary ?? null,
  );
  if (rotary?.row.liftingPoints !== 1 || !means.some(({ sling }) => sling !== null)) return [];
  return [
    paragraph(
      say`The rotary has ${rowNumber(rotary, '', 'liftingPoints')} lifting point in the catalog: one straight leg and its
        one eye bolt then have to be rated for all of the ${number([...path, 'mass'], 'kg')}, not for a share.`,
    ),
  ];
}

/** What each leg and each eye bolt of a sling has to be rated for. */
const slings = ({ lifting: { means }, path }: LiftingAt): readonly Block[] =>
  means.flatMap(({ sling }, index) => {
    if (sling === null) return [];
    const at = [...path, 'means', index, 'sling'];
    if (sling.legPull === null)
      return [paragraph(say`The legs of the sling stand too flat: a longer sling, or a spreader beam.`)];
    return [
      paragraph(
        say`On the hoist each leg of the sling has to be rated for ${number([...at, 'legPull'], 'kg')} at its angle, and
          each eye bolt for ${number([...at, 'eyeBolt'], 'kg')} when pulled straight.`,
      ),
    ];
  });
