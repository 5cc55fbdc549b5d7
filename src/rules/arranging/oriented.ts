import type { BuiltIn, Machine } from '../../catalog/catalog.ts';
import { gravityOn } from '../facts/rotary-facts.ts';
import type { Case } from '../judging/case.ts';
import { idOf } from '../judging/memo.ts';
import type { Hanging } from '../judging/value.ts';
import { rotaryId } from './setting.ts';

type Axis = Exclude<BuiltIn['tiltAxis'], 'unknown'>;
type Lean = Exclude<BuiltIn['leans'], 'unknown'>;

const SIDEWAYS: readonly Lean[] = ['toward-left', 'toward-right'];

/** Y is level on a vertical spindle, upright on a horizontal one. */
function leansAbout(axis: Axis, spindle: Machine['spindle']): readonly Lean[] {
  if (axis === 'along-y') return SIDEWAYS;
  return spindle === 'horizontal' ? ['downward', 'upward'] : ['toward-door', 'toward-column'];
}

/**
 * A built-in table of which nobody says along which axis it tilts, or which way the work leans: each way that
 * it may lie, to be judged like the kinds of a part. Every other case as it is.
 */
export function oriented(ground: Case): readonly Case[] {
  const builtIn = ground.machine.row.builtIn;
  if (builtIn === null || (builtIn.tiltAxis !== 'unknown' && builtIn.leans !== 'unknown')) return [ground];
  const known = ground.memo.oriented.get(ground);
  if (known !== undefined) return known;
  const made = waysOf(builtIn, ground.machine.row.spindle).map(([tiltAxis, leans]) =>
    lying(ground, builtIn, tiltAxis, leans),
  );
  // the reader of catalogs refuses it: without a way no check would be judged, and all would seem to hold
  if (made.length === 0)
    throw new Error(`${ground.machine.key}: its table leans no way that its spindle allows`);
  ground.memo.oriented.set(ground, made);
  return made;
}

const waysOf = (
  { tiltAxis, leans }: BuiltIn,
  spindle: Machine['spindle'],
): readonly (readonly [Axis, Lean])[] =>
  (tiltAxis === 'unknown' ? (['along-x', 'along-y'] as const) : [tiltAxis]).flatMap((axis) =>
    leansAbout(axis, spindle)
      .filter((lean) => leans === 'unknown' || leans === lean)
      .map((lean) => [axis, lean] as const),
  );

function lying(ground: Case, builtIn: BuiltIn, tiltAxis: Axis, leans: Lean): Case {
  const { machine, memo } = ground;
  const rotary = { ...ground.rotary, gravity: gravityOn(machine.row.spindle, tiltAxis) };
  const open = (name: 'tiltAxis' | 'leans'): readonly Hanging[] =>
    builtIn[name] === 'unknown'
      ? [
          {
            gaps: [{ path: `machines[${machine.key}].builtIn.${name}`, ask: 'seller', essential: true }],
            forSeller: false,
            forOthers: true,
          },
        ]
      : [];
  return {
    ...ground,
    keys: {
      ...ground.keys,
      rotary: rotaryId(memo, rotary),
      mounting: idOf(memo, 'mounting', `built-in/${tiltAxis}/${leans}`),
    },
    rotary,
    machine: { ...machine, row: { ...machine.row, builtIn: { ...builtIn, tiltAxis, leans } } },
    orientation: [...open('tiltAxis'), ...open('leans')],
    withParts: new Map(),
  };
}
