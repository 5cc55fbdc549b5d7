import { sideBox } from '../../mechanics/geometry/side-box.ts';
import { slantBox } from '../../mechanics/geometry/slant-box.ts';
import type { TipBox } from '../../mechanics/geometry/tip-box.ts';
import { topBox } from '../../mechanics/geometry/top-box.ts';
import { undercutBox } from '../../mechanics/geometry/undercut-box.ts';
import { unionBox } from '../../mechanics/geometry/union-box.ts';
import type { Approach, Part } from '../../questions/answers.ts';
import { type KnownPart, plain } from './known-stack.ts';

/** The tilt at which an approach is cut; null where its angle is not known. */
function tiltOf(approach: Approach): number | null {
  if (approach === 'top') return 0;
  if (approach === 'sides' || approach === 'around') return 90;
  return plain('slant' in approach ? approach.slant : approach.undercut);
}

/** The tilts at which a family is cut, the level one and the greatest always among them. */
export function tiltsOf({ approaches }: Part): readonly number[] {
  if (approaches === 'unknown') return [0];
  const known = approaches.flatMap((each) => tiltOf(each) ?? []);
  return [...new Set([0, ...known])].sort((a, b) => a - b);
}

/** Where the tips come at one tilt, in the rotary's own frame; null where nothing is cut there or a size is not known. */
export function tipsAt(
  { approaches, depthTop, depthSide }: Part,
  known: KnownPart,
  faceOffset: number,
  toolMargin: number,
  tilt: number,
): TipBox | null {
  const { radius, eccentricity, height, fixtureHeight: f, faces } = known;
  if (approaches === 'unknown' || radius === null || eccentricity === null) return null;
  if (height === null || f === null) return null;
  const bottom = faceOffset + f;
  const work = { radius, eccentricity, bottom, top: bottom + height, toolMargin };
  const boxes = approaches
    .filter((each) => tiltOf(each) === tilt)
    .flatMap((approach): readonly TipBox[] => {
      if (approach === 'top') {
        const depth = plain(depthTop);
        return depth === null ? [] : [topBox({ ...work, depthTop: depth })];
      }
      if (approach !== 'sides' && approach !== 'around') {
        return 'slant' in approach ? [slantBox(work, tilt)] : [undercutBox(work, tilt)];
      }
      const depth = plain(depthSide);
      const sides = faces.flatMap((face): readonly TipBox[] =>
        depth === null || face === null
          ? []
          : [sideBox({ ...work, depthSide: depth, faceOffset: face, faceWidth: 2 * face })],
      );
      // turning past the tool, the corners come as high as they sweep
      return approach === 'sides' ? sides : sides.map((side) => ({ ...side, w: [side.w[0], radius] }));
    });
  return boxes.length === 0 ? null : unionBox(boxes);
}
