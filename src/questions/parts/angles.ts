import type { Approach, Part, Uncertain } from '../answers.ts';

/** The angles at which a part is cut on the slant, or under. Example: anglesOf(part, 'slant') → [35]. */
export function anglesOf(part: Part, kind: 'slant' | 'undercut'): readonly Uncertain[] {
  if (part.approaches === 'unknown') return [];
  return part.approaches.flatMap((each) => angleOf(each, kind) ?? []);
}

/** The part with these angles instead of the ones it had, in their place. It must be cut that way already. */
export function withAngles(part: Part, kind: 'slant' | 'undercut', angles: readonly Uncertain[]): Part {
  if (part.approaches === 'unknown') return part;
  const first = part.approaches.findIndex((each) => angleOf(each, kind) !== null);
  const approaches = part.approaches.flatMap((each, index): readonly Approach[] => {
    if (angleOf(each, kind) === null) return [each];
    if (index !== first) return [];
    return withoutDoubles(angles).map((angle) => (kind === 'slant' ? { slant: angle } : { undercut: angle }));
  });
  return { ...part, approaches };
}

const withoutDoubles = (angles: readonly Uncertain[]): readonly Uncertain[] =>
  angles.filter((angle, index) => angles.findIndex((each) => String(each) === String(angle)) === index);

/** In a list of one, since an angle may itself be a pair. */
function angleOf(approach: Approach, kind: 'slant' | 'undercut'): readonly [Uncertain] | null {
  if (typeof approach === 'string') return null;
  if (kind === 'slant') return 'slant' in approach ? [approach.slant] : null;
  return 'undercut' in approach ? [approach.undercut] : null;
}
