import type { Definition } from '../formula/printed-formula.ts';

const SWEPT: Definition = {
  name: 'swept',
  of: ['angle', 'from', 'to'],
  formula: 'if(angle >= from, if(angle <= to, 1, -1), -1)',
  words: 'one where an angle is passed on the way from one tilt to another, else minus one',
};

const RISE: Definition = {
  name: 'rise',
  of: ['v', 'w', 'from', 'to'],
  formula:
    'max(v*sin(from) + w*cos(from), v*sin(to) + w*cos(to), swept(atan2(v, w), from, to)*sqrt(v^2 + w^2))',
  words:
    'the greatest height of a point while it tilts: it stands v beside the rotary axis and w above the tilt axis, and where it passes straight above the axis the height is its distance from it',
};

const SINK: Definition = {
  name: 'sink',
  of: ['v', 'w', 'from', 'to'],
  formula: '-rise(-v, -w, from, to)',
  words: 'the least height of a point while it tilts',
};

const OUT: Definition = {
  name: 'out',
  of: ['v', 'w', 'from', 'to'],
  formula:
    'max(v*cos(from) - w*sin(from), v*cos(to) - w*sin(to), swept(atan2(-w, v), from, to)*sqrt(v^2 + w^2))',
  words: 'how far a point comes out to the side away from the lean while it tilts',
};

const BACK: Definition = {
  name: 'back',
  of: ['v', 'w', 'from', 'to'],
  formula: '-out(-v, -w, from, to)',
  words:
    'how far a point comes to the side of the lean while it tilts, less than nothing where it goes beyond the axis',
};

const ALL: readonly Definition[] = [SWEPT, RISE, SINK, OUT, BACK];

/** The functions of tilting that these formulas use, each with those that it is made of. */
export function tiltingIn(formulas: readonly string[]): readonly Definition[] {
  const used = new Set<string>();
  const visit = (formula: string): void => {
    for (const each of ALL) {
      if (used.has(each.name) || !new RegExp(`\\b${each.name}\\(`).test(formula)) continue;
      used.add(each.name);
      visit(each.formula);
    }
  };
  for (const formula of formulas) visit(formula);
  return ALL.filter(({ name }) => used.has(name));
}
