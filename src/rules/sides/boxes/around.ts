import { part } from '../../inputs/part.ts';
import type { Case } from '../../judging/case.ts';
import { negated, rises, term } from '../../judging/term.ts';
import { facesOf, radiusRises, sweptRadius } from '../stack.ts';
import { alongTiltAxis, type BoxTerms, outward, widened } from './box-terms.ts';
import { sideBoxTerms } from './side.ts';

/** All around on a tilting table: the wall turns past the tool at tilt 90. */
export function wallBoxTerms(of: Case): BoxTerms {
  const name = 'around';
  const faces = facesOf(of).map(sideBoxTerms);
  const anyFace = faces.slice(0, 1);
  return {
    name,
    ...alongTiltAxis(name),
    vLow: anyFace.flatMap((face) => face.vLow),
    vHigh: anyFace.flatMap((face) => face.vHigh),
    wLow: faces.flatMap((face) => face.wLow),
    wHigh: [term(name, radiusRises, sweptRadius)],
  };
}

/** All around on a level axis: u runs along the axis from the faceplate, w is measured from the axis. */
export function aroundBoxTerms(of: Case): BoxTerms {
  const name = 'around';
  return {
    name,
    uLow: [term(name, { f: rises(part.fixtureHeight) }, (values) => values.f)],
    uHigh: [
      term(
        name,
        { f: rises(part.fixtureHeight), h: rises(part.height), ...widened },
        (values) => values.f + values.h + values.D / 2,
      ),
    ],
    vLow: [negated(outward(name))],
    vHigh: [outward(name)],
    wLow: facesOf(of)
      .map(sideBoxTerms)
      .flatMap((face) => face.wLow),
    wHigh: [term(name, radiusRises, sweptRadius)],
  };
}
