import { partInput as input } from './input.ts';

/** The numbers of one family, as the checks read them. */
export const part = {
  length: input('length', 'mm', [5, 800], (of) => of.length),
  width: input('width', 'mm', [5, 800], (of) => of.width),
  height: input('height', 'mm', [3, 800], (of) => of.height),
  planRadius: input('plan radius', 'mm', [2, 600], (of) => of.planRadius),
  eccentricity: input('eccentricity', 'mm', [0, 200], (of) => of.eccentricity),
  mass: input('mass', 'kg', [0.01, 800], (of) => of.mass),
  tilt: input('greatest polar angle', '°', [0, 135], (of) => of.tilt),
  fixtureDiameter: input('fixture diameter', 'mm', [0, 600], (of) => of.fixtureDiameter),
  fixtureHeight: input('fixture height', 'mm', [0, 300], (of) => of.fixtureHeight),
  fixtureMass: input('fixture mass', 'kg', [0, 150], (of) => of.fixtureMass),
  depthTop: input('depth from the top', 'mm', [0, 200], (of) => of.depthTop),
  depthSide: input('depth from the side', 'mm', [0, 200], (of) => of.depthSide),
  lowestSideFeature: input('lowest side feature', 'mm', [0, 400], (of) => of.lowestSideFeature),
  tolerance: input('tolerance', 'mm', [0.002, 0.5], (of) => of.tolerance),
  brakeSafety: input('brake safety', '', [1, 4], (of) => of.brakeSafety),
  cutForce: input('peak tangential force', 'N', [0, 20000], (of) => of.cut.force),
  cutPower: input('cutting power', 'kW', [0, 60], (of) => of.cut.power),
  cutTorque: input('cutting torque', 'N·m', [0, 400], (of) => of.cut.torque),
  cutSpeed: input('spindle speed of the cut', 'rev/min', [50, 40000], (of) => of.cut.speed),
  contourForce: input(
    'peak tangential force of the contour cut',
    'N',
    [0, 20000],
    (of) => of.contourCut.force,
  ),
  contourFeed: input('contour feed', 'mm/min', [100, 10000], (of) => of.contourFeed),
  contourRadius: input('contour radius', 'mm', [1, 500], (of) => of.contourRadius),
  chordError: input('chord error', 'mm', [0.001, 0.05], (of) => of.chordError),
} as const;
