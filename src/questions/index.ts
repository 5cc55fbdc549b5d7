import { chordError } from './contour/chord-error.ts';
import { contourCut } from './contour/contour-cut.ts';
import { contourFeed } from './contour/contour-feed.ts';
import { contourRadius } from './contour/contour-radius.ts';
import { cut } from './cut/cut.ts';
import { cutDepth } from './cut/cut-depth.ts';
import { cutWidth } from './cut/cut-width.ts';
import { cutterDiameter } from './cut/cutter-diameter.ts';
import { cutterTeeth } from './cut/cutter-teeth.ts';
import { cuttingSpeed } from './cut/cutting-speed.ts';
import { interrupted } from './cut/interrupted.ts';
import { toothFeed } from './cut/tooth-feed.ts';
import { drill } from './drill/drill.ts';
import { drillDiameter } from './drill/drill-diameter.ts';
import { drillFeed } from './drill/drill-feed.ts';
import { drillOffset } from './drill/drill-offset.ts';
import { eccentricity } from './holding/eccentricity.ts';
import { fixtureDiameter } from './holding/fixture-diameter.ts';
import { fixtureHeight } from './holding/fixture-height.ts';
import { fixtureMass } from './holding/fixture-mass.ts';
import { heldBy } from './holding/held-by.ts';
import { matters } from './matters/matters.ts';
import { budget } from './money/budget.ts';
import { approaches } from './parts/approaches.ts';
import { bottom } from './parts/bottom.ts';
import { depthSide } from './parts/depth-side.ts';
import { depthTop } from './parts/depth-top.ts';
import { diameter } from './parts/diameter.ts';
import { length } from './parts/length.ts';
import { lowestSideFeature } from './parts/lowest-side-feature.ts';
import { mass } from './parts/mass.ts';
import { material } from './parts/material.ts';
import { motion } from './parts/motion.ts';
import { must } from './parts/must.ts';
import { name } from './parts/name.ts';
import { shape } from './parts/shape.ts';
import { size } from './parts/size.ts';
import { slant } from './parts/slant.ts';
import { stands } from './parts/stands.ts';
import { tolerance } from './parts/tolerance.ts';
import { undercut } from './parts/undercut.ts';
import type { Question } from './question.ts';
import { ownMill } from './start/own-mill.ts';
import { units } from './start/units.ts';
import { largestCutter } from './tools/largest-cutter.ts';
import { longestTool } from './tools/longest-tool.ts';
import { shortestTool } from './tools/shortest-tool.ts';
import { loading } from './work/loading.ts';
import { visesWanted } from './work/vises-wanted.ts';
import { cycleMinutes } from './yearly/cycle-minutes.ts';
import { handlingMinutes } from './yearly/handling-minutes.ts';
import { setupMinutes } from './yearly/setup-minutes.ts';
import { setups } from './yearly/setups.ts';
import { yearlyLots } from './yearly/yearly-lots.ts';
import { yearlyQuantity } from './yearly/yearly-quantity.ts';

/** Every question, in the order in which they are asked. A new one is a file in its section's folder and a line here. */
export const QUESTIONS: readonly Question[] = [
  units,
  ownMill,
  name,
  shape,
  size,
  diameter,
  length,
  stands,
  material,
  mass,
  approaches,
  slant,
  undercut,
  bottom,
  motion,
  depthTop,
  depthSide,
  lowestSideFeature,
  tolerance,
  must,
  heldBy,
  fixtureDiameter,
  fixtureHeight,
  fixtureMass,
  eccentricity,
  cut,
  cutterDiameter,
  cutterTeeth,
  cutDepth,
  cutWidth,
  toothFeed,
  cuttingSpeed,
  interrupted,
  contourCut,
  contourFeed,
  contourRadius,
  chordError,
  drill,
  drillDiameter,
  drillFeed,
  drillOffset,
  yearlyQuantity,
  yearlyLots,
  setups,
  setupMinutes,
  cycleMinutes,
  handlingMinutes,
  shortestTool,
  longestTool,
  largestCutter,
  loading,
  visesWanted,
  budget,
  matters,
];
