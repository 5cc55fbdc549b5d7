import type { Part } from '../../questions/answers.ts';
import type { Family } from '../../rules/arranging/family.ts';
import type { ClassGround } from '../../rules/classes/ground.ts';
import { ONE_AXIS } from '../../rules/classes/rule.ts';
import type { PartCase, RotaryCase } from '../../rules/judging/case.ts';
import { known, type Value } from '../../rules/judging/value.ts';
import { workedOutcome } from '../examples/worked-check.ts';
import { step } from '../formula/formula-source.ts';
import { tiltLines } from '../pieces/tilt-lines.ts';
import { given, joined, line, numbered, numbers, type Stretch } from './stretch.ts';

type EachSize = (of: PartCase, own: number, family: Family) => Stretch;

/** A size of every family, each with its number. */
const ofEach =
  (size: EachSize) =>
  ({ families }: ClassGround): Stretch =>
    joined(
      ...families.map((family, index): Stretch => {
        const [first, ...others] = family.cases;
        // of which kind it is is not known
        if (first === undefined || others.length > 0) return numbers();
        return size(first, index + 1, family);
      }),
    );

/** The circle that part and fixture describe. */
export const circles = ofEach((of, own, { name }) => {
  const { shape, length, width, eccentricity, fixtureDiameter } = of;
  const at = `parts[${name}].`;
  const corner =
    shape === 'round'
      ? {
          given: [given(`a${own}`, 'mm', `diameter: ${name}`, length)],
          steps: [step(`r${own}`, 'mm', `radius: ${name}`, `a${own}/2`)],
        }
      : {
          given: [
            given(`a${own}`, 'mm', `length as it stands: ${name}`, length),
            given(`b${own}`, 'mm', `width as it stands: ${name}`, width),
          ],
          steps: [
            step(`r${own}`, 'mm', `from its axis to its corner: ${name}`, `sqrt(a${own}^2 + b${own}^2)/2`),
          ],
        };
  return joined(corner, {
    given: [
      given(
        `e${own}`,
        'mm',
        `how far it stands off the rotary axis: ${name}`,
        eccentricity,
        `${at}eccentricity`,
      ),
      given(`F${own}`, 'mm', `diameter of its fixture: ${name}`, fixtureDiameter),
    ],
    steps: [
      step(`z${own}`, 'mm', `circle that it describes: ${name}`, `max(2*(r${own} + e${own}), F${own})`),
    ],
  });
});

/** The greatest tilt that the part of this number asks for; nothing where that is not known. Example: 'z', 2 → z2 */
export function tiltAsked(part: Part, letter: string, own: number): Stretch {
  const lines = tiltLines(part, `${letter}${own}`, {
    letter: `w${own}_`,
    words: `greatest tilt that it asks for: ${part.name}`,
  });
  return lines === null ? numbers() : { given: lines.symbols, steps: lines.steps };
}

/** That of every family. */
export const tilts = (ground: ClassGround): Stretch =>
  ofEach((_, own, family) => tiltAsked(ground.partOf(family), 'z', own))(ground);

/** Part and fixture, where they are carried with the faceplate on edge. */
export const masses = (ground: ClassGround): Stretch =>
  ofEach(({ mass, fixtureMass, tilt }, own, { name }) => {
    const level = ONE_AXIS.includes(ground.class);
    const both = `m${own} + f${own}`;
    return {
      given: [
        given(`m${own}`, 'kg', `mass of the part: ${name}`, mass),
        given(`f${own}`, 'kg', `mass of its fixture: ${name}`, fixtureMass),
        ...(level
          ? []
          : [given(`t${own}`, '°', `greatest tilt that it asks for: ${name}`, tilt, `parts[${name}].tilt`)]),
      ],
      steps: [
        step(
          `z${own}`,
          'kg',
          level
            ? `part and fixture: ${name}`
            : `part and fixture, nothing where it stays nearly level: ${name}`,
          level ? both : `if(t${own} > 30, ${both}, 0)`,
        ),
      ],
    };
  })(ground);

/** The rotary of the class whose tilt axis carries most, and what is judged on it. */
function strongestOn({ tables, judged }: ClassGround) {
  const [table] = [...tables].sort((a, b) => b.tiltMoment.low - a.tiltMoment.low);
  const on = judged.find(({ setUp }) => setUp.candidate.rotary === table);
  return table === undefined || on === undefined ? null : { table, on };
}

/** What each family pulls on the tilt axis of the strongest, as the check of the tilt moment works it out. */
export function moments(ground: ClassGround): Stretch {
  const strongest = strongestOn(ground);
  if (strongest === null) return numbers();
  return joined(
    ...ground.families.map((family, index): Stretch => {
      const own = index + 1;
      const outcome = strongest.on.families
        .find((each) => each.family.name === family.name)
        ?.outcomes.find(({ check }) => check.id === 'tilt-moment');
      const words = `moment on the tilt axis: ${family.name}`;
      if (outcome === undefined)
        return numbers(given(`z${own}`, 'N·m', words, known(0, `parts[${family.name}].moment`)));
      const worked = workedOutcome(outcome, ground.partOf(family));
      if (worked === null) return numbers();
      const { stretch, need } = numbered(worked, own);
      return joined(
        {
          ...stretch,
          steps: stretch.steps.map((each) => ({ ...each, words: `${each.words}: ${family.name}` })),
        },
        line(`z${own}`, 'N·m', words, `max(0, ${need})`),
      );
    }),
  );
}

/** The moment that the strongest carries. */
export const momentCarried = (ground: ClassGround): Stretch => {
  const strongest = strongestOn(ground);
  return strongest === null
    ? numbers()
    : numbers(
        given('L', 'N·m', 'moment that the strongest of this kind carries', strongest.table.tiltMoment),
      );
};

/** The most, or the least, that any rotary of the class offers. */
export function offered(
  { tables }: Pick<ClassGround, 'tables'>,
  read: (table: RotaryCase) => Value,
  { gives, unit, words, which }: { gives: string; unit: string; words: string; which: 'max' | 'min' },
): Stretch {
  const one = tables.length === 1;
  const all = tables.map((table, index) =>
    given(
      one ? gives : `g${index + 1}`,
      unit,
      one ? words : `${words.replace(/^largest |^least /, '')}: ${table.row?.name ?? table.key}`,
      read(table),
    ),
  );
  if (one) return numbers(...all);
  return {
    given: all,
    steps: [step(gives, unit, words, `${which}(${all.map(({ symbol }) => symbol).join(', ')})`)],
  };
}
