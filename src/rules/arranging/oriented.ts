import type { BuiltIn } from '../../catalog/catalog.ts';
import type { Case } from '../judging/case.ts';
import { idOf } from '../judging/memo.ts';
import type { Hanging } from '../judging/value.ts';

type Axis = Exclude<BuiltIn['tiltAxis'], 'unknown'>;
type Lean = Exclude<BuiltIn['leans'], 'unknown'>;

const LEANS: Readonly<Record<Axis, readonly Lean[]>> = {
  'along-x': ['toward-door', 'toward-column'],
  'along-y': ['toward-left', 'toward-right'],
};

/**
 * A built-in table of which nobody says along which axis it tilts, or which way the work leans: each way that
 * it may lie, to be judged like the kinds of a part. Every other case as it is.
 */
export function oriented(ground: Case): readonly Case[] {
  const builtIn = ground.machine.row.builtIn;
  if (builtIn === null || (builtIn.tiltAxis !== 'unknown' && builtIn.leans !== 'unknown')) return [ground];
  const known = ground.memo.oriented.get(ground);
  if (known !== undefined) return known;
  const made = waysOf(builtIn).map(([tiltAxis, leans]) => lying(ground, builtIn, tiltAxis, leans));
  ground.memo.oriented.set(ground, made);
  return made;
}

const waysOf = ({ tiltAxis, leans }: BuiltIn): readonly (readonly [Axis, Lean])[] =>
  (tiltAxis === 'unknown' ? (['along-x', 'along-y'] as const) : [tiltAxis]).flatMap((axis) =>
    LEANS[axis].filter((lean) => leans === 'unknown' || leans === lean).map((lean) => [axis, lean] as const),
  );

function lying(ground: Case, builtIn: BuiltIn, tiltAxis: Axis, leans: Lean): Case {
  const { machine } = ground;
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
    keys: { ...ground.keys, mounting: idOf(ground.memo, 'mounting', `built-in/${tiltAxis}/${leans}`) },
    machine: { ...machine, row: { ...machine.row, builtIn: { ...builtIn, tiltAxis, leans } } },
    orientation: [...open('tiltAxis'), ...open('leans')],
    withParts: new Map(),
  };
}
