import { NOT_SURE } from '../../questions/ranges.ts';
import { answered, known } from '../../rules/judging/value.ts';
import { step } from '../formula/formula-source.ts';
import { type FeatureWay, lineWords, words } from './feature-way.ts';
import { given } from './stretch.ts';

/** Depth of the deepest hole in its diameters. */
export const coolant: FeatureWay = (of, need) => {
  const holes = of.covered.flatMap(({ family }) => {
    const { drill } = of.partOf(family.name);
    const [first] = family.cases;
    return drill === null || first === undefined ? [] : [{ name: family.name, drill, first }];
  });
  return {
    given: [
      ...holes.flatMap(({ name, drill, first }, index) => [
        given(`p${index + 1}`, 'mm', `depth from the top: ${name}`, first.depthTop),
        given(`q${index + 1}`, 'mm', `depth from the sides: ${name}`, first.depthSide),
        given(
          `d${index + 1}`,
          'mm',
          `diameter of the drill: ${name}`,
          answered(drill.diameter, `parts[${name}].drill.diameter`, NOT_SURE['parts.drill.diameter']),
        ),
      ]),
      given('L', '', lineWords(need), known(of.shop.assume.deepHole, 'assume.deepHole')),
    ],
    steps: [
      step(
        'N',
        '',
        words(need),
        `max(${['0', ...holes.map((_, at) => `max(p${at + 1}, q${at + 1})/d${at + 1}`)].join(', ')})`,
      ),
    ],
  };
};

/** Blank less part, over the hours. */
export const chips: FeatureWay = (of, need) => {
  const all = of.covered.flatMap(({ family }) => {
    const [first] = family.cases;
    return first === undefined ? [] : [{ family, first, part: of.partOf(family.name) }];
  });
  if (all.length === 0) return null;
  return {
    given: [
      ...all.flatMap(({ family, first, part }, index) => {
        const own = index + 1;
        const at = `parts[${family.name}]`;
        const round = first.shape === 'round';
        return [
          given(
            `a${own}`,
            'mm',
            `${round ? 'diameter' : 'length as it stands'}: ${family.name}`,
            first.length,
          ),
          ...(round ? [] : [given(`b${own}`, 'mm', `width as it stands: ${family.name}`, first.width)]),
          given(`c${own}`, 'mm', `height: ${family.name}`, first.height),
          given(
            `f${own}`,
            'share',
            `share of the blank that stays: ${family.name}`,
            answered(part.fill, `${at}.fill`, NOT_SURE['parts.fill']),
          ),
          given(
            `n${own}`,
            '',
            `quantity a year: ${family.name}`,
            answered(part.yearly.quantity, `${at}.yearly.quantity`, NOT_SURE['parts.yearly.quantity']),
          ),
          given(`h${own}`, 'h', `hours a year: ${family.name}`, family.hours, `${at}.hoursAYear`),
        ];
      }),
      given('L', 'l/h', lineWords(need), known(of.shop.assume.chipLiters, 'assume.chipLiters')),
    ],
    steps: [
      ...all.map(({ family, first }, index) => {
        const own = index + 1;
        const blank = first.shape === 'round' ? `pi/4*a${own}^2*c${own}` : `a${own}*b${own}*c${own}`;
        return step(
          `V${own}`,
          'l',
          `metal cut away in a year: ${family.name}`,
          `${blank}*n${own}*(1 - f${own})/1000000`,
        );
      }),
      step(
        'N',
        'l/h',
        words(need),
        `(${all.map((_, at) => `V${at + 1}`).join(' + ')})/(${all.map((_, at) => `h${at + 1}`).join(' + ')})`,
      ),
    ],
  };
};
