import type { HousingBox, Mounting } from '../../catalog/catalog.ts';
import { pointsBack } from './points-back.ts';

/** A side of the machine, as somebody sees it who stands at its door. */
export type MachineSide = 'left' | 'right' | 'door' | 'column';

/** How a rotary lies on the table. */
interface Lying {
  readonly mounting: Mounting;
  /** end for end */
  readonly turned: boolean;
}

const isAlongX = (mounting: Mounting): boolean => mounting.endsWith('along-x');

/** Where a box of the housing begins and ends along X or Y of the machine, from the rotary center, mm. */
export function housingEnds(
  box: HousingBox,
  { mounting, turned }: Lying,
  axis: 'x' | 'y',
): readonly [low: number, high: number] {
  const [from, to] = (axis === 'x') === isAlongX(mounting) ? box.along : box.across;
  return pointsBack(mounting, turned, axis) ? [-to, -from] : [from, to];
}

/**
 * The sides on which a housing stands beside the rotary center, in the way of whoever reaches across there.
 * Example: a box at along −140 to −70, tilt axis along Y → ['door']; turned end for end → ['column'].
 */
export function housingSides(boxes: readonly HousingBox[], lying: Lying): readonly MachineSide[] {
  const sides = boxes.flatMap((box): readonly MachineSide[] => {
    const [left, right] = housingEnds(box, lying, 'x');
    const [front, rear] = housingEnds(box, lying, 'y');
    const besideX = front < 0 && rear > 0;
    const besideY = left < 0 && right > 0;
    return [
      ...(besideX && right <= 0 ? ['left' as const] : []),
      ...(besideX && left >= 0 ? ['right' as const] : []),
      ...(besideY && rear <= 0 ? ['door' as const] : []),
      ...(besideY && front >= 0 ? ['column' as const] : []),
    ];
  });
  return [...new Set(sides)];
}

/** The way in which the faceplate of a level axis looks: away from the far end of its base. */
export const facedSide = ({ mounting, turned }: Lying): MachineSide =>
  isAlongX(mounting) ? (turned ? 'left' : 'right') : turned ? 'door' : 'column';
