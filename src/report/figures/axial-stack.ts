import type { Decision } from '../../rules/decision.ts';
import { type Inline, joined, say, words } from '../blocks/inline.ts';
import { type ArrangementAt, type CheckAt, checksAt } from '../checks-at.ts';
import { arrangementName, partName } from '../names.ts';
import { acrossPanel } from './across-panel.ts';
import { alongPanel } from './along-panel.ts';
import { checkTold } from './check-told.ts';
import { drawnText, type Figure, notKnown } from './figure.ts';
import { onItsSide } from './on-its-side.ts';
import { HEIGHT_CHECKS, type StackSubject, stackSubject } from './stack-subject.ts';
import { acrossAxis, alongAxis } from './tilted-view.ts';
import { uprightPanel } from './upright-panel.ts';
import { uprightView } from './upright-view.ts';

/**
 * The stack on a single axis, for the family at which a check of heights is tightest: across the axis and along it; where the
 * spindle is level the axis stands upright. Null where it is not known how it stands.
 */
export function axialStack(decision: Decision, at: ArrangementAt): Figure | null {
  const upright = stackSubject(decision, at, uprightView);
  const across = stackSubject(decision, at, (arrangement, rows) =>
    isOnLevelAxis(rows) ? acrossAxis(arrangement, rows) : null,
  );
  const along = stackSubject(decision, at, (arrangement, rows) =>
    isOnLevelAxis(rows) ? alongAxis(arrangement, rows) : null,
  );
  const subject = upright ?? across;
  if (subject === null) return null;
  const tailstock = tailstockOf(subject);
  const panels =
    upright !== null
      ? [onItsSide(uprightPanel(upright, tailstock))]
      : [
          ...(across === null ? [] : [acrossPanel(across, tailstock)]),
          ...(along === null ? [] : [alongPanel(along)]),
        ];
  const said = wordsOf(subject, tailstock);
  return {
    words: said,
    scene: {
      name: 'stack-from-the-side',
      title: drawnText(say`The stack from the side`, decision),
      description: drawnText(said, decision),
      panels,
      toScale: true,
      notDrawn: notDrawn(subject, tailstock),
    },
  };
}

const isOnLevelAxis = ({ machine, rotary }: StackSubject['rows']): boolean =>
  machine.spindle === 'vertical' && rotary !== null && rotary.tilt === null;

/** The check of what stands out from the faceplate, for the family that is drawn. */
const tailstockOf = ({ at, part }: StackSubject): CheckAt | null =>
  checksAt(at).find(({ result }) => result.check === 'tailstock' && result.part === part.name) ?? null;

function wordsOf(
  { decision, at, part, view, checks }: StackSubject,
  tailstock: CheckAt | null,
): readonly Inline[] {
  const name = arrangementName(decision, at.arrangement.id, [...at.path, 'id']);
  const first = Object.values(checks)[0];
  const family =
    first === undefined ? words('the work') : partName(decision, part.name, [...first.path, 'part']);
  const told = [
    ...HEIGHT_CHECKS.flatMap((check) => checks[check] ?? []),
    ...(tailstock === null ? [] : [tailstock]),
  ].map(checkTold);
  const counted = words(
    view.laidOver ? 'From the rotary axis toward the spindle' : 'Heights above the rotary axis',
  );
  return say`${name}, carrying ${family}, seen ${words(view.seenFrom)}, to scale. ${counted}: ${joined(told)}.`;
}

/** What a reader might miss. */
function notDrawn(
  { decision, rows, known, view }: StackSubject,
  tailstock: CheckAt | null,
): readonly string[] {
  const unknown = [
    ...(!view.laidOver && rows.rotary?.housing === null ? ['the housing beside the work'] : []),
    ...(known.radius === null || known.height === null ? ['the part'] : []),
    ...(known.fixtureHeight === null ? ['the fixture'] : []),
  ];
  return [
    ...notKnown(unknown),
    ...(view.laidOver
      ? [
          drawnText(
            say`The body of the rotary below its faceplate is not drawn: no catalog gives its outline as it stands on its back.`,
            decision,
          ),
        ]
      : []),
    ...(tailstock !== null && tailstock.result.verdict === 'holds if'
      ? [drawnText(say`The tailstock is not drawn: no catalog gives its outline.`, decision)]
      : []),
  ];
}
