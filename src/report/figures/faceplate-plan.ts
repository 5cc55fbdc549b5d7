import { circle, type Dimension, line, type Mark, rectangle, type Shape } from '../../drawing/scene.ts';
import type { Part } from '../../questions/answers.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Inline, say, verdictSign, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { checkNumbers } from '../check-numbers.ts';
import { type ArrangementAt, type CheckAt, checksAt, ofCoveredParts, worstFirst } from '../checks-at.ts';
import { arrangementName, partName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { drawnText, type Figure, measured } from './figure.ts';
import { type KnownPart, knownPart, plain, rowsOf } from './known-stack.ts';

const ROUND: readonly CheckId[] = ['swing', 'faceplate'];

/** What is known of the work seen along the rotary axis. */
interface Seen {
  readonly part: Part;
  readonly answer: Path;
  readonly known: KnownPart;
  readonly faceplate: number | null;
  readonly swing: CheckAt | undefined;
}

/**
 * The work on its faceplate, seen along the rotary axis, for the family that is tightest there: what it is, what it sweeps,
 * and what turns freely. Null where its size is not known.
 */
export function faceplatePlan(decision: Decision, at: ArrangementAt): Figure | null {
  const rows = rowsOf(decision, at.arrangement);
  const round = (checks: readonly CheckAt[]): CheckAt | undefined =>
    worstFirst(checks.filter(({ result }) => ROUND.includes(result.check) && result.part !== null))[0];
  const looked = at.arrangement.passes === 'no' ? checksAt(at) : ofCoveredParts(at);
  const worst = round(looked) ?? round(checksAt(at));
  const index = decision.inputs.answers.parts.findIndex(({ name }) => name === worst?.result.part);
  const part = decision.inputs.answers.parts[index];
  if (rows === null || worst === undefined || part === undefined) return null;
  const own = checksAt(at).filter(({ result }) => result.part === part.name && ROUND.includes(result.check));
  const seen: Seen = {
    part,
    answer: ['inputs', 'answers', 'parts', index],
    known: knownPart(part),
    faceplate: plain(rows.table.faceplate ?? undefined),
    swing: own.find(({ result }) => result.check === 'swing'),
  };
  const outline = outlineOf(seen);
  if (outline === null) return null;
  const family = partName(decision, part.name, [...worst.path, 'part']);
  const name = arrangementName(decision, at.arrangement.id, [...at.path, 'id']);
  const told = own.map(sentenceOf).flatMap((each, place) => (place === 0 ? each : [words('; '), ...each]));
  const said = say`${family} on the faceplate of ${name}, seen along the rotary axis, to scale. ${told}.`;
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
      notDrawn: seen.faceplate === null ? ['Not drawn, because it is not known: the faceplate.'] : [],
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

function measuresOf(
  decision: Decision,
  { part, answer, known, faceplate, swing }: Seen,
): readonly Dimension[] {
  const across = (
    name: readonly Inline[],
    path: Path,
    long: number | null,
    side: 'above' | 'below',
    tight = false,
  ) => (long === null ? [] : measured(decision, { name, path, from: [-long / 2, 0], side, tight }));
  const e = known.eccentricity ?? 0;
  const [a = null, b = null] = known.faces;
  const swings = (key: 'need' | 'have'): number | null => plain(swing?.result[key] ?? null);
  return [
    ...(swing === undefined
      ? []
      : [
          ...across(say`swing, needed`, [...swing.path, 'need'], swings('need'), 'below', true),
          ...across(say`swing, there is`, [...swing.path, 'have'], swings('have'), 'below'),
        ]),
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
    ...(faceplate === null ? [] : facePath(decision, swing, faceplate)),
  ];
}

/** The faceplate by the row that it stands in: of the rotary, or of the table built in. */
function facePath(decision: Decision, swing: CheckAt | undefined, faceplate: number): readonly Dimension[] {
  const place = swing?.path[1];
  const arrangement = typeof place === 'number' ? decision.arrangements[place] : undefined;
  if (arrangement === undefined) return [];
  const { rotaries, machines } = decision.inputs.catalog;
  const path: Path =
    arrangement.rotary === null
      ? [
          'inputs',
          'catalog',
          'machines',
          machines.findIndex(({ id }) => id === arrangement.machine),
          'builtIn',
          'faceplate',
        ]
      : [
          'inputs',
          'catalog',
          'rotaries',
          rotaries.findIndex(({ id }) => id === arrangement.rotary),
          'faceplate',
        ];
  return measured(decision, { name: say`faceplate`, path, from: [-faceplate / 2, 0], side: 'above' });
}

function sentenceOf(check: CheckAt): readonly Inline[] {
  const { need, have, margin } = checkNumbers(check);
  return say`${words(CHECK_WORDS[check.result.check].name)}: ${need} needed, ${have} there, margin ${margin} (${verdictSign(check.result.verdict)})`;
}
