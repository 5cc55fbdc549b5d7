import { BASE_UNITS } from '../../quantities/kinds.ts';
import type { Field, Question } from '../../questions/question.ts';
import type { Decision } from '../../rules/decision.ts';
import { data, enumerate, type Inline, number, words } from '../blocks/inline.ts';
import { lookUp, type Path } from '../blocks/path.ts';
import { machineName } from '../names.ts';

/** The answer to a question as pieces of a sentence, each number with the place where it stands. */
export function answerPieces(decision: Decision, question: Question, index: number): readonly Inline[] {
  const { field } = question;
  const path = answerPath(decision, question, index);
  const value = question.get(decision.inputs.answers, index);
  switch (field.kind) {
    case 'text':
      return [data(path)];
    case 'yes-no':
      return [words(value === 'unknown' ? NOT_SURE : value === true ? 'yes' : 'no')];
    case 'quantity':
      return [quantity(path, field)];
    case 'quantities':
      return quantities(decision, question, index);
    default:
      return chosen(decision, field, value, path);
  }
}

const NOT_SURE = 'not sure';

/**
 * `parts.cut.ap` of the second part → inputs.answers.parts[1].cut.ap; `shop.lifting.hoist.capacity` → that of the
 * first hoist.
 */
function answerPath({ inputs }: Decision, { path, of }: Question, index: number): Path {
  const keys = path.split('.');
  const { lifting } = inputs.answers.shop;
  const [, list, by, key] = keys;
  if (list === 'lifting' && by !== undefined && key !== undefined && lifting !== 'unknown') {
    const place = lifting.findIndex((means) => means.by === by);
    return ['inputs', 'answers', 'shop', 'lifting', place, key];
  }
  return of === 'part'
    ? ['inputs', 'answers', 'parts', index, ...keys.slice(1)]
    : ['inputs', 'answers', ...keys];
}

/** The unit of a field's numbers. */
export const fieldUnit = (field: Field): string =>
  field.kind === 'quantity' || field.kind === 'quantities' ? BASE_UNITS[field.of] : '';

const quantity = (path: Path, field: Field): Inline => number(path, fieldUnit(field), { ifNull: NOT_SURE });

/** Numbers of which there are several: the sides of a block, or the angles among the approaches. */
function quantities(decision: Decision, question: Question, index: number): readonly Inline[] {
  const path = answerPath(decision, question, index);
  const key = String(path.at(-1));
  const part = decision.inputs.answers.parts[index];
  const approaches = part === undefined || part.approaches === 'unknown' ? [] : part.approaches;
  const angles = approaches.flatMap((approach, place): readonly Path[] =>
    typeof approach === 'object' && key in approach ? [[...path.slice(0, -1), 'approaches', place, key]] : [],
  );
  if (angles.length > 0) return enumerate(angles.map((at) => quantity(at, question.field)));
  const list = lookUp(decision, path);
  if (!Array.isArray(list)) return [words(NOT_SURE)];
  return list.flatMap((_, place) => {
    const one = quantity([...path, place], question.field);
    return place === 0 ? [one] : [words(' × '), one];
  });
}

function chosen(
  decision: Decision,
  field: Extract<Field, { readonly kind: 'choice' | 'list' | 'order' }>,
  value: unknown,
  path: Path,
): readonly Inline[] {
  if (value === 'unknown') return [words(NOT_SURE)];
  const options = field.options({ machines: [] });
  const label = (id: unknown): readonly Inline[] => {
    const option = options.find((each) => each.value === id);
    return option === undefined ? machineName(decision, String(id), path) : [words(option.label)];
  };
  return Array.isArray(value) ? enumerate(value.map(label)) : label(value);
}
