import type { Approach, Motion, Part } from '../../questions/answers.ts';
import { type Hanging, openAnswer } from '../judging/value.ts';

/** A round part that lies down is treated as the block around it. */
type Body = 'block' | 'round upright' | 'round lying';

/** One choice among the kinds that a family's answers name. */
export interface Kinds {
  readonly body: Body;
  readonly motion: Motion;
  readonly heldByCollet: boolean;
  readonly approaches: readonly Approach[];
  readonly open: readonly Hanging[];
}

/**
 * The sides that a family may need where nobody knows: one of them alone, which asks for least, or all of them. What is
 * in between asks for more than the one and less than the other.
 */
const POSSIBLE_APPROACHES: readonly (readonly Approach[])[] = [
  ['sides'],
  ['around'],
  [{ slant: 'unknown' }],
  [{ undercut: 'unknown' }],
  ['top', 'sides', 'around', { slant: 'unknown' }, { undercut: 'unknown' }],
];

function bodiesOf({ shape, stands }: Part): readonly Body[] {
  if (shape === 'block') return ['block'];
  const round = (['lying', 'upright'] as const)
    .filter((each) => stands === 'unknown' || stands === each)
    .map((each): Body => `round ${each}`);
  return shape === 'round' ? round : ['block', ...round];
}

/**
 * Every choice that the answers leave open: one where all kinds are known. The body, moving axes and
 * approaches change the same needs and are taken together. That a part is held by a collet, or that it is a
 * surface cut with the tilt fixed, changes checks of its own only, so one kind of each is enough.
 */
export function kindsOf(part: Part, root: string): readonly Kinds[] {
  const open: Hanging[] = [];
  const note = (name: string): void => {
    open.push(...openAnswer(`${root}.${name}`));
  };
  if (part.shape === 'unknown') note('shape');
  const bodies = bodiesOf(part);
  if (part.shape === 'round' && bodies.length > 1) note('stands');
  if (part.motion === 'unknown') note('motion');
  if (part.holding.by === 'unknown') note('holding.by');
  if (part.approaches === 'unknown') note('approaches');
  const motions: readonly Motion[] =
    part.motion === 'unknown' ? ['positional', 'simultaneous'] : [part.motion];
  const choices = part.approaches === 'unknown' ? POSSIBLE_APPROACHES : [part.approaches];
  const heldByCollet = part.holding.by === 'collet';
  const together = bodies.flatMap((body) =>
    motions.flatMap((motion) =>
      choices.map((approaches) => ({ body, motion, heldByCollet, approaches, open })),
    ),
  );
  return together.flatMap((kind, index): readonly Kinds[] => [
    kind,
    ...(index === 0 && part.motion === 'unknown' ? [{ ...kind, motion: 'surfaces' as const }] : []),
    ...(index === 0 && part.holding.by === 'unknown' ? [{ ...kind, heldByCollet: true }] : []),
  ]);
}
