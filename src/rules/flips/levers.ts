import type { Part } from '../../questions/answers.ts';
import type { Outcome } from '../judging/outcome.ts';
import { type EvaluatedTerm, evaluateTerm } from '../judging/side.ts';
import type { Judged } from '../weighing/judged.ts';
import type { Ground } from './value-at.ts';

/**
 * Paths of the answers and catalog values of which one alone may let an arrangement through: those that went into every
 * check that stands in its way by itself, or where none does, into any that keeps a part from being held.
 */
export function leversOf({ own, families }: Judged, { answers }: Ground): readonly string[] {
  const failing = (outcomes: readonly Outcome[]): readonly Outcome[] =>
    outcomes.filter(({ verdict }) => verdict === 'fails');
  const behindOf = (outcome: Outcome): readonly string[] => {
    const part = answers.parts.find(({ name }) => name === outcome.of.part?.name);
    const paths = pathsOf(outcome).flatMap((path) =>
      part === undefined ? [path] : [path, ...madeOf(path, part)],
    );
    return paths.flatMap((path) => [path, ...behind(path)]);
  };
  const musts = families.filter(({ family }) => family.must).flatMap(({ outcomes }) => outcomes);
  const alone = failing([...own, ...musts]).map(behindOf);
  const [first, ...others] = alone;
  const paths =
    first === undefined
      ? families.flatMap(({ outcomes }) => failing(outcomes).flatMap(behindOf))
      : first.filter((path) => others.every((each) => each.includes(path)));
  return [...new Set(paths)].filter((path) => !IS_NO_SIZE.test(path));
}

/** What is counted or keyed is another product, not a little more of the same. */
const IS_NO_SIZE = /\.slots\.|\.hold\.|liftingPoints|phases|axisDrives/;

/** Every value that the terms of its comparison read. */
function pathsOf({ comparison, of }: Outcome): readonly string[] {
  if (comparison === null) return [];
  const { need, have, easings = [] } = comparison;
  const sides = [need, have, ...easings.flatMap(({ all }) => all.flatMap((each) => [each.need, each.have]))];
  const terms = sides.flatMap((side) => [...side.terms(of), ...(side.less?.(of) ?? [])]);
  return terms.flatMap((term) => readBy(evaluateTerm(term, of)));
}

const readBy = ({ values }: EvaluatedTerm): readonly string[] =>
  Object.values(values).map(({ path }) => path);

/** The answers that a number of a part was worked out from. */
function madeOf(path: string, part: Part): readonly string[] {
  const root = `parts[${part.name}]`;
  const of = (...names: readonly string[]): readonly string[] => names.map((name) => `${root}.${name}`);
  const size = part.shape === 'round' ? of('diameter', 'length') : of('size[0]', 'size[1]', 'size[2]');
  switch (path.slice(root.length + 1)) {
    case 'planRadius':
      return size.slice(0, part.shape === 'round' ? 1 : 2);
    case 'mass':
      return part.mass === 'unknown' ? [...size, ...of('fill')] : [];
    case 'cut.force':
    case 'cut.power':
    case 'cut.torque':
    case 'cut.speed':
      return typeof part.cut === 'object' ? of('cut.ap', 'cut.ae', 'cut.fz', 'cut.vc', 'cut.diameter') : [];
    default:
      return path === 'tilted radius' || path === 'gravity moment'
        ? [...size, ...of('holding.height', 'holding.mass', 'eccentricity')]
        : [];
  }
}

/** What may be changed about a price is the budget, about lifts what asks for them. */
const behind = (path: string): readonly string[] =>
  path === 'capital' || path === 'price'
    ? ['money.budget']
    : path === 'swaps'
      ? ['work.visesWanted', 'work.switchesPerWeek']
      : [];
