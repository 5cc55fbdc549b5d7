import { circle, type Dimension, line, type Mark, rectangle, type Shape } from '../../drawing/scene.ts';
import type { Part } from '../../questions/answers.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Inline, joined, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import type { ArrangementAt, CheckAt } from '../checks-at.ts';
import { arrangementName, partName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { checkTold } from './check-told.ts';
import { drawnText, type Figure, measured, notKnown } from './figure.ts';
import { type KnownPart, knownPart, plain, rowsOf } from './known-stack.ts';
import { tightestPart } from './tightest-part.ts';

const ROUND: readonly CheckId[] = ['swing', 'faceplate'];

/** What is known of the work seen along the rotary axis. */
interface Seen {
  readonly part: Part;
  readonly answer: Path;
  readonly known: KnownPart;
  readonly faceplate: number | null;
  readonly facePath: Path;
  readonly swing: CheckAt | undefined;
  /** whether the part stands on the faceplate */
  readonly stands: CheckAt | undefined;
  /** the one of both that gives way first */
  readonly worst: CheckAt;
}

/**
 * The work on its faceplate, seen along the rotary axis, for the family that is tightest there: what it is, what it sweeps,
 * and what turns freely. Null where its size is not known.
 */
export function faceplatePlan(decision: Decision, at: ArrangementAt): Figure | null {
  const rows = rowsOf(decision, at.arrangement);
  const found = tightestPart(decision, at, (check) => ROUND.includes(check));
  if (rows === null || found === null) return null;
  const { part, index, worst, own } = found;
  const seen: Seen = {
    part,
    answer: ['inputs', 'answers', 'parts', index],
    known: knownPart(part),
    faceplate: plain(rows.table.faceplate ?? undefined),
    facePath: [...rows.tablePath, 'faceplate'],
    swing: own.find(({ result }) => result.check === 'swing'),
    stands: own.find(({ result }) => result.check === 'faceplate'),
    worst,
  };
  const outline = outlineOf(seen);
  if (outline === null) return null;
  const family = partName(decision, part.name, [...worst.path, 'part']);
  const name = arrangementName(decision, at.arrangement.id, [...at.path, 'id']);
  const said = say`${family} on the faceplate of ${name}, seen along the rotary axis, to scale. ${joined(own.map(checkTold))}.`;
  return {
    words: said,
    scene: {
      name: 'work-on-the-faceplate',
      title: drawnText(say`The work on the faceplate`, decision),
      description: drawnText(said, decision),
      panels: [
        {
          title: drawnText(say`${family}, seen along the rotary axis`, decision),
          ...outline,
          dimensions: measuresOf(decision, seen),
          labels: [],
        },
      ],
      toScale: true,
      notDrawn: notKnown(seen.faceplate === null ? ['the faceplate'] : []),
    },
  };
}

/** Off the rotary axis to the right: which way is not said, and the same all around. */
function outlineOf({
  part,
  known,
  faceplate,
  swing,
}: Seen): { readonly shapes: readonly Shape[]; readonly marks: readonly Mark[] } | null {
  const { radius, eccentricity: e, fixtureDiameter: F, faces } = known;
  const [a, b = a] = faces;
  if (radius === null || e === null || a === null || a === undefined || b === null || b === undefined)
    return null;
  const free = plain(swing?.result.have ?? null);
  const isRound = part.shape === 'round' && part.stands === 'upright';
  const body = isRound ? circle('part', [e, 0], a) : rectangle('part', [e - a, -b], [e + a, b]);
  return {
    shapes: [
      ...(free === null ? [] : [circle('limit', [0, 0], free / 2)]),
      ...(faceplate === null ? [] : [circle('faceplate', [0, 0], faceplate / 2)]),
      ...(F === null || F === 0 ? [] : [circle('fixture', [0, 0], F / 2)]),
      body,
      circle('sweep', [0, 0], radius),
      line('axis', [-CROSS, 0], [CROSS, 0]),
      line('axis', [0, -CROSS], [0, CROSS]),
    ],
    marks: [
      { at: [e, b / 2], name: 'part', stands: 'on' },
      ...(F === null || F === 0 ? [] : [markAt('fixture', F / 2, -0.7, 'left')]),
      ...(faceplate === null ? [] : [markAt('faceplate', faceplate / 2, -0.4, 'below')]),
      markAt('what it sweeps', radius, 0.7, 'right'),
      ...(free === null ? [] : [markAt('what turns freely', free / 2, 0.5, 'above')]),
    ],
  };
}

const CROSS = 15;

/** On a circle, at a share of its radius to the right. */
const markAt = (name: string, radius: number, share: number, stands: Mark['stands']): Mark => {
  const high = radius * Math.sqrt(1 - share * share);
  return { at: [radius * share, stands === 'below' ? -high : high], name, stands };
};

function measuresOf(decision: Decision, seen: Seen): readonly Dimension[] {
  const { part, answer, known, faceplate, facePath, stands } = seen;
  const across = (name: readonly Inline[], path: Path, long: number | null, side: 'above' | 'below') =>
    long === null ? [] : measured(decision, { name, path, from: [-long / 2, 0], side });
  const e = known.eccentricity ?? 0;
  const [a = null, b = null] = known.faces;
  return [
    ...checkMeasures(decision, seen),
    ...across(say`fixture`, [...answer, 'holding', 'diameter'], known.fixtureDiameter || null, 'above'),
    ...(part.shape !== 'block' || a === null || b === null
      ? []
      : [
          ...measured(decision, {
            name: say`part, length`,
            path: [...answer, 'size', 0],
            from: [e - a, b],
            side: 'above',
          }),
          ...measured(decision, {
            name: say`part, width`,
            path: [...answer, 'size', 1],
            from: [e + a, -b],
            side: 'right',
          }),
        ]),
    ...(part.shape === 'round' && part.stands === 'upright' && a !== null
      ? measured(decision, {
          name: say`part, diameter`,
          path: [...answer, 'diameter'],
          from: [e - a, 0],
          side: 'above',
        })
      : []),
    // the verdict measures it where it is about it
    ...(stands === undefined ? across(say`faceplate`, facePath, faceplate, 'above') : []),
  ];
}

/** What the checks need and have across the axis; the circle around the part is about its own. */
function checkMeasures(decision: Decision, { swing, stands, worst, known }: Seen): readonly Dimension[] {
  return [swing, stands].flatMap((check): readonly Dimension[] => {
    if (check === undefined) return [];
    const { result, path } = check;
    const name = words(CHECK_WORDS[result.check].name);
    const center = check === stands ? (known.eccentricity ?? 0) : 0;
    const measure = (what: string, key: 'need' | 'have', about: number): readonly Dimension[] => {
      const long = plain(result[key]);
      if (long === null || long === 0) return [];
      const from = [about - long / 2, 0] as const;
      const tight = result === worst.result && key === 'need';
      return measured(decision, {
        name: say`${name}, ${words(what)}`,
        path: [...path, key],
        from,
        side: 'below',
        tight,
      });
    };
    return [...measure('needed', 'need', center), ...measure('there is', 'have', 0)];
  });
}
