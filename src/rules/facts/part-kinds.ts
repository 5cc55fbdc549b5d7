import { type Approach, MOTIONS, type Motion, type Part } from '../../questions/answers.ts';
import type { Gap } from '../decision.ts';

/** One choice among the kinds that a family's answers name. */
export interface Kinds {
  /** round and standing upright; everything else is treated as the block around it */
  readonly round: boolean;
  readonly motion: Motion;
  readonly heldByCollet: boolean;
  readonly approaches: readonly Approach[];
  readonly gaps: readonly Gap[];
}

/** The sides that a family may need where nobody knows: each of these is judged. */
const POSSIBLE_APPROACHES: readonly (readonly Approach[])[] = [
  ['sides'],
  ['around'],
  ['top', 'sides'],
  ['top', 'sides', { slant: 'unknown' }],
  ['top', 'sides', { undercut: 'unknown' }],
];

/** Every choice that the answers leave open: one where all kinds are known. */
export function kindsOf(part: Part, root: string): readonly Kinds[] {
  const gaps: Gap[] = [];
  const open = (name: string): void => {
    gaps.push({ path: `${root}.${name}`, ask: 'user', essential: true });
  };
  // a shape that nobody knows is covered by the block: its radius and faces take in those of a round part
  if (part.shape === 'unknown') open('shape');
  const rounds =
    part.shape !== 'round'
      ? [false]
      : part.stands === 'unknown'
        ? [true, false]
        : [part.stands === 'upright'];
  if (rounds.length > 1) open('stands');
  if (part.motion === 'unknown') open('motion');
  const motions = part.motion === 'unknown' ? MOTIONS : [part.motion];
  if (part.holding.by === 'unknown') open('holding.by');
  const collets = part.holding.by === 'unknown' ? [false, true] : [part.holding.by === 'collet'];
  if (part.approaches === 'unknown') open('approaches');
  const approaches = part.approaches === 'unknown' ? POSSIBLE_APPROACHES : [part.approaches];
  return rounds.flatMap((round) =>
    motions.flatMap((motion) =>
      collets.flatMap((heldByCollet) =>
        approaches.map((each) => ({
          round,
          motion,
          heldByCollet,
          approaches: each,
          gaps,
        })),
      ),
    ),
  );
}
