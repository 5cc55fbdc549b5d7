import { bay } from './building/bay.ts';
import { ceiling } from './building/ceiling.ts';
import { doorwayHeight } from './building/doorway-height.ts';
import { doorwayWidth } from './building/doorway-width.ts';
import { floorRating } from './building/floor-rating.ts';
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
import { doorSill } from './lifting/door-sill.ts';
import { forkliftCapacity } from './lifting/forklift-capacity.ts';
import { handFrom } from './lifting/hand-from.ts';
import { handLift } from './lifting/hand-lift.ts';
import { handReach } from './lifting/hand-reach.ts';
import { hoistCapacity } from './lifting/hoist-capacity.ts';
import { hookHeight } from './lifting/hook-height.ts';
import { liftingGear } from './lifting/lifting-gear.ts';
import { liftingMeans } from './lifting/lifting-means.ts';
import { liftingPeople } from './lifting/lifting-people.ts';
import { loadCenter } from './lifting/load-center.ts';
import { slingAngle } from './lifting/sling-angle.ts';
import { slingHeight } from './lifting/sling-height.ts';
import { slingLegs } from './lifting/sling-legs.ts';
import { matters } from './matters/matters.ts';
import { budget } from './money/budget.ts';
import { interest } from './money/interest.ts';
import { platePrice } from './money/plate-price.ts';
import { residual } from './money/residual.ts';
import { riggingPrice } from './money/rigging-price.ts';
import { shopRate } from './money/shop-rate.ts';
import { training } from './money/training.ts';
import { yearlyCosts } from './money/yearly-costs.ts';
import { years } from './money/years.ts';
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
import { cam } from './programming/cam.ts';
import type { Question } from './question.ts';
import { ownMill } from './start/own-mill.ts';
import { units } from './start/units.ts';
import { airFlow } from './supply/air-flow.ts';
import { airPressure } from './supply/air-pressure.ts';
import { kVA } from './supply/kva.ts';
import { phases } from './supply/phases.ts';
import { volts } from './supply/volts.ts';
import { largestCutter } from './tools/largest-cutter.ts';
import { longestTool } from './tools/longest-tool.ts';
import { shortestTool } from './tools/shortest-tool.ts';
import { loading } from './work/loading.ts';
import { swap } from './work/swap.ts';
import { switchesPerWeek } from './work/switches-per-week.ts';
import { threeAxisShare } from './work/three-axis-share.ts';
import { viseHeight } from './work/vise-height.ts';
import { viseLength } from './work/vise-length.ts';
import { viseWidth } from './work/vise-width.ts';
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
  bay,
  ceiling,
  doorwayWidth,
  doorwayHeight,
  floorRating,
  phases,
  volts,
  kVA,
  airFlow,
  airPressure,
  liftingMeans,
  hoistCapacity,
  hookHeight,
  slingLegs,
  slingAngle,
  slingHeight,
  liftingGear,
  doorSill,
  forkliftCapacity,
  loadCenter,
  liftingPeople,
  handReach,
  handFrom,
  handLift,
  threeAxisShare,
  visesWanted,
  viseWidth,
  viseLength,
  viseHeight,
  switchesPerWeek,
  swap,
  loading,
  budget,
  shopRate,
  yearlyCosts,
  riggingPrice,
  training,
  platePrice,
  years,
  interest,
  residual,
  cam,
  matters,
];
