import type { LengthUnits } from '../quantities/kinds.ts';
import type { Cut, Part } from './answers.ts';
import { type Plain, type Writer, writerIn } from './write-answers-values.ts';

/** One part as it stands in an answers file. What its shape does not have is left out. */
export function partToFile(part: Part, units: LengthUnits): Plain {
  const writer = writerIn(units);
  const { length, mass } = writer;
  const { holding, contour, yearly, drill } = part;
  return {
    name: part.name,
    shape: part.shape,
    ...sizeToFile(part, writer),
    stands: part.stands,
    material: part.material,
    mass: mass(part.mass),
    fill: part.fill,
    approaches: part.approaches === 'unknown' ? 'unknown' : [...part.approaches],
    bottom: part.bottom,
    motion: part.motion,
    depthTop: length(part.depthTop),
    depthSide: length(part.depthSide),
    lowestSideFeature: length(part.lowestSideFeature),
    tolerance: length(part.tolerance),
    holding: {
      by: holding.by,
      diameter: length(holding.diameter),
      height: length(holding.height),
      mass: mass(holding.mass),
    },
    eccentricity: length(part.eccentricity),
    cut: cutToFile(part.cut, writer),
    contourCut: cutToFile(part.contourCut, writer),
    ...(drill === null
      ? {}
      : {
          drill: {
            diameter: length(drill.diameter),
            feed: writer.perTurn(drill.feed),
            offset: length(drill.offset),
          },
        }),
    contour: {
      feed: writer.feed(contour.feed),
      radius: length(contour.radius),
      chordError: length(contour.chordError),
    },
    yearly: { ...yearly },
    must: part.must,
  };
}

function sizeToFile({ shape, size, diameter, length: long }: Part, { length }: Writer): Plain {
  const block = { size: size.map(length) };
  const round = { diameter: length(diameter), length: length(long) };
  if (shape === 'block') return block;
  return shape === 'round' ? round : { ...block, ...round };
}

function cutToFile(cut: Cut, { length, perTooth, cuttingSpeed }: Writer): unknown {
  if (typeof cut === 'string') return cut;
  return {
    diameter: length(cut.diameter),
    teeth: cut.teeth,
    ap: length(cut.ap),
    ae: length(cut.ae),
    fz: perTooth(cut.fz),
    vc: cuttingSpeed(cut.vc),
    interrupted: cut.interrupted,
  };
}
