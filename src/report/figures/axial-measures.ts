import type { Dimension } from '../../drawing/scene.ts';
import { type Inline, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import type { CheckAt } from '../checks-at.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { measured } from './figure.ts';
import { heightPath, plain } from './known-stack.ts';
import type { StackSubject } from './stack-subject.ts';

/** Fixture and part along the rotary axis, and how far they stand out against what is free without a tailstock. */
export function axialMeasures(
  { decision, known, part, partIndex, view }: StackSubject,
  tailstock: CheckAt | null,
  y: number,
): readonly Dimension[] {
  const answer: Path = ['inputs', 'answers', 'parts', partIndex];
  const f = known.fixtureHeight;
  // a measure runs to the right: where the axis points to the left it begins at its far end
  const measure = (name: readonly Inline[], path: Path, from: number, long: number | null, tight = false) =>
    long === null
      ? []
      : measured(decision, {
          name,
          path,
          from: [view.sign === 1 ? from : -from - long, y],
          side: 'below',
          tight,
        }).filter(({ from: a, to: b }) => a[0] !== b[0]);
  const [need, have] = [plain(tailstock?.result.need ?? null), plain(tailstock?.result.have ?? null)];
  const name = words(CHECK_WORDS.tailstock.name);
  return [
    ...measure(say`fixture`, [...answer, 'holding', 'height'], 0, f),
    ...(f === null ? [] : measure(say`part`, [...answer, ...heightPath(part)], f, known.height)),
    ...(tailstock === null
      ? []
      : [
          ...measure(say`${name}, needed`, [...tailstock.path, 'need'], 0, need),
          ...measure(say`${name}, there is`, [...tailstock.path, 'have'], 0, have),
          ...(need === null || have === null
            ? []
            : measure(say`${name}, margin`, [...tailstock.path, 'margin'], need, have - need, have < need)),
        ]),
  ];
}
