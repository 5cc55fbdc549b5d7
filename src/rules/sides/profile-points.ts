import { part } from '../inputs/part.ts';
import { rotary } from '../inputs/rotary.ts';
import type { Case } from '../judging/case.ts';
import { falls, rises, type Use } from '../judging/term.ts';
import {
  bottom,
  bottomFalls,
  bottomRises,
  radiusFalls,
  radiusRises,
  sweptRadius,
  top,
  topFalls,
  topRises,
} from './stack.ts';

type Uses = Readonly<Record<string, Use>>;
type Numbers = Readonly<Record<string, number>>;

/** A point of the outline of the work beside the rotary axis: v out from it, w above the tilt axis. */
export interface ProfilePoint {
  readonly name: string;
  readonly v: {
    readonly rises: Uses;
    readonly falls: Uses;
    readonly of: (values: Numbers) => number;
  };
  readonly w: {
    readonly rises: Uses;
    readonly falls: Uses;
    readonly of: (values: Numbers) => number;
  };
}

type Read<Key extends string> = (values: Readonly<Record<Key, number>>) => number;
const coordinate = <Key extends string>(up: Record<Key, Use>, down: Record<Key, Use>, read: Read<Key>) => ({
  rises: up as Uses,
  falls: down as Uses,
  of: read as (values: Numbers) => number,
});

const partEdge = coordinate(radiusRises, radiusFalls, sweptRadius);
const fixtureEdge = coordinate(
  { F: rises(part.fixtureDiameter) },
  { F: falls(part.fixtureDiameter) },
  (of) => of.F / 2,
);
const faceplateEdge = coordinate(
  { P: rises(rotary.faceplate) },
  { P: falls(rotary.faceplate) },
  (of) => of.P / 2,
);
const atTop = coordinate(topRises, topFalls, top);
const atBottom = coordinate(bottomRises, bottomFalls, bottom);
const atFaceplate = coordinate(
  { p: rises(rotary.faceOffset) },
  { p: falls(rotary.faceOffset) },
  (of) => of.p,
);

const WORK: readonly ProfilePoint[] = [
  { name: 'top edge of the part', v: partEdge, w: atTop },
  { name: 'bottom edge of the part', v: partEdge, w: atBottom },
  { name: 'top edge of the fixture', v: fixtureEdge, w: atBottom },
  { name: 'foot of the fixture', v: fixtureEdge, w: atFaceplate },
];
const FACEPLATE: ProfilePoint = {
  name: 'edge of the faceplate',
  v: faceplateEdge,
  w: atFaceplate,
};

/** The outline of part and fixture, which what surrounds the tilting table must clear. */
export const workProfile = (): readonly ProfilePoint[] => WORK;

/** The outline with the faceplate, for everything that the spindle and the table must clear. */
export const wholeProfile = (of: Case): readonly ProfilePoint[] =>
  of.rotary.hasFaceplate ? [...WORK, FACEPLATE] : WORK;
