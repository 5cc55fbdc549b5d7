import { cuttingPower } from '../../mechanics/forces/cutting-power.ts';
import { cuttingTorque } from '../../mechanics/forces/cutting-torque.ts';
import {
  MATERIAL_IDS,
  MATERIALS,
  type MaterialId,
  type MaterialRow,
} from '../../mechanics/forces/materials.ts';
import { meanChipThickness } from '../../mechanics/forces/mean-chip-thickness.ts';
import { peakTangentialForce } from '../../mechanics/forces/peak-tangential-force.ts';
import { specificCuttingForce } from '../../mechanics/forces/specific-cutting-force.ts';
import { spindleSpeed } from '../../mechanics/forces/spindle-speed.ts';
import { tableFeed } from '../../mechanics/forces/table-feed.ts';
import { hull, type Interval } from '../../quantities/interval.ts';
import { type Choice, CUT_SIZES, type Cut, type CutDetail, type CutSize } from '../../questions/answers.ts';
import { NOT_SURE } from '../../questions/ranges.ts';
import type { CutCase } from '../judging/case.ts';
import { answered, derived, type Hanging, openAnswer, type Value } from '../judging/value.ts';
import { corners } from './corners.ts';

/** Depth and width of an assumed cut, in tool diameters; the tool itself is at most 20 mm with four teeth. */
export const ASSUMED_CUTS: Readonly<Record<CutSize, { readonly ap: number; readonly ae: number }>> = {
  light: { ap: 1 / 4, ae: 1 / 10 },
  medium: { ap: 1 / 2, ae: 1 / 4 },
  heavy: { ap: 1 / 2, ae: 1 / 2 },
};
export const ASSUMED_TEETH = 4;
export const ASSUMED_DIAMETER = 20;

/** A cut whose numbers may lie anywhere between their ends. */
interface CutEnds {
  readonly diameter: Interval;
  readonly teeth: Interval;
  readonly ap: Interval;
  readonly ae: Interval;
  readonly fz: Interval;
  readonly vc: Interval;
}

type Numbers = Readonly<Record<keyof CutEnds, number>>;

/** What the cut asks for, over every material and cut that the answers leave possible. */
export function cutFacts(
  cut: Cut,
  material: Choice<MaterialId>,
  largestCutter: Value,
  path: string,
  materialPath: string,
): CutCase {
  const rows = material === 'unknown' ? MATERIAL_IDS.map((id) => MATERIALS[id]) : [MATERIALS[material]];
  const gaps = material === 'unknown' ? openAnswer(materialPath) : [];
  if (typeof cut === 'object') {
    const described = describedCut(cut, path);
    return facts(
      rows.map((row) => [row, described.ends]),
      path,
      [...described.from, ...gaps],
    );
  }
  const sizes = cut === 'unknown' ? CUT_SIZES : [cut];
  const from = [largestCutter, ...gaps, ...(cut === 'unknown' ? openAnswer(path) : [])];
  const cases = rows.flatMap((row) =>
    sizes.flatMap((size) => assumedCuts(size, row, largestCutter).map((ends) => [row, ends] as const)),
  );
  return facts(cases, path, from);
}

/** An assumed cut for each end of the largest cutter: depth and width go with its diameter. */
function assumedCuts(size: CutSize, row: MaterialRow, largestCutter: Interval): readonly CutEnds[] {
  const diameters = new Set(
    [largestCutter.low, largestCutter.high].map((most) => Math.min(ASSUMED_DIAMETER, most)),
  );
  const at = (value: number): Interval => ({ low: value, high: value });
  return [...diameters].map((diameter) => ({
    diameter: at(diameter),
    teeth: at(ASSUMED_TEETH),
    ap: at(diameter * ASSUMED_CUTS[size].ap),
    ae: at(diameter * ASSUMED_CUTS[size].ae),
    fz: at(row.fz),
    vc: at(row.vc),
  }));
}

function describedCut(
  cut: CutDetail,
  path: string,
): { readonly ends: CutEnds; readonly from: readonly Value[] } {
  const read = (key: keyof CutEnds) => answered(cut[key], `${path}.${key}`, NOT_SURE[`parts.cut.${key}`]);
  const ends = {
    diameter: read('diameter'),
    teeth: read('teeth'),
    ap: read('ap'),
    ae: read('ae'),
    fz: read('fz'),
    vc: read('vc'),
  };
  return { ends, from: Object.values(ends) };
}

function facts(
  cases: readonly (readonly [MaterialRow, CutEnds])[],
  path: string,
  from: readonly Hanging[],
): CutCase {
  const over = (name: string, read: (row: MaterialRow, cut: Numbers) => number): Value =>
    derived(
      hull(
        cases.map(([row, ends]) =>
          corners(
            KEYS.map((key) => ends[key]),
            (values) => read(row, narrowed(values)),
          ),
        ),
      ),
      `${path}.${name}`,
      from,
    );
  return {
    force: over('force', (row, cut) => peakTangentialForce({ ...row, ...cut })),
    power: over('power', powerOf),
    torque: over('torque', (row, cut) =>
      cuttingTorque(powerOf(row, cut), spindleSpeed(cut.vc, cut.diameter)),
    ),
    speed: over('speed', (_row, cut) => spindleSpeed(cut.vc, cut.diameter)),
  };
}

const KEYS = ['diameter', 'teeth', 'ap', 'ae', 'fz', 'vc'] as const;

/** The numbers of one corner; a width beyond the tool's own diameter is a full slot. */
function narrowed([diameter = 0, teeth = 0, ap = 0, ae = 0, fz = 0, vc = 0]: readonly number[]): Numbers {
  return { diameter, teeth, ap, ae: Math.min(ae, diameter), fz, vc };
}

function powerOf({ kc11, mc }: MaterialRow, { diameter, teeth, ap, ae, fz, vc }: Numbers): number {
  const feed = tableFeed(fz, teeth, spindleSpeed(vc, diameter));
  return cuttingPower(ap, ae, feed, specificCuttingForce(kc11, mc, meanChipThickness(fz, ae, diameter)));
}
