import { part } from '../inputs/part.ts';
import { rotary } from '../inputs/rotary.ts';
import type { Case } from '../judging/case.ts';
import { falls, type Input, rises, type Use } from '../judging/term.ts';

/**
 * Heights in the stack of faceplate, fixture and part, on a tilting table above the tilt axis at tilt 0.
 * B is the bottom of the part, T its top, R the radius that it sweeps about the rotary axis.
 */
export interface Stack {
  readonly p: number;
  readonly f: number;
  readonly h: number;
}

export const bottom = ({ p, f }: Pick<Stack, 'p' | 'f'>): number => p + f;
export const top = ({ p, f, h }: Stack): number => p + f + h;
export const sweptRadius = ({ r, e }: { readonly r: number; readonly e: number }): number => r + e;

type BottomUses = Readonly<Record<'p' | 'f', Use>>;
type TopUses = Readonly<Record<'p' | 'f' | 'h', Use>>;
type RadiusUses = Readonly<Record<'r' | 'e', Use>>;

export const bottomRises: BottomUses = {
  p: rises(rotary.faceOffset),
  f: rises(part.fixtureHeight),
};
export const bottomFalls: BottomUses = {
  p: falls(rotary.faceOffset),
  f: falls(part.fixtureHeight),
};
export const topRises: TopUses = { ...bottomRises, h: rises(part.height) };
export const topFalls: TopUses = { ...bottomFalls, h: falls(part.height) };
export const radiusRises: RadiusUses = {
  r: rises(part.planRadius),
  e: rises(part.eccentricity),
};
export const radiusFalls: RadiusUses = {
  r: falls(part.planRadius),
  e: falls(part.eccentricity),
};

/** A pair of side faces: how far apart they are, and how wide each is. */
export interface Face {
  readonly name: string;
  readonly across: Input;
  readonly along: Input;
}

/** The side faces of the part: of a round one the wall, as one face as wide as the diameter. */
export const facesOf = (of: Case): readonly Face[] =>
  of.part?.shape === 'round'
    ? [{ name: 'side', across: part.length, along: part.width }]
    : [
        {
          name: 'side faces along the length',
          across: part.length,
          along: part.width,
        },
        {
          name: 'side faces along the width',
          across: part.width,
          along: part.length,
        },
      ];
