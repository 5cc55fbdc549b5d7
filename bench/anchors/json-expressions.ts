/** The same twelve checks as data: [need, have], in the order of `checks.ts`, operations in the same order too. */
type Expression = number | { readonly [operation: string]: string | readonly Expression[] };

const of = (name: string): Expression => ({ var: name });
const sum = (...terms: readonly Expression[]): Expression => ({ '+': terms });
const product = (...factors: readonly Expression[]): Expression => ({ '*': factors });
const ratio = (a: Expression, b: Expression): Expression => ({ '/': [a, b] });

const radius = of('part.radius');
const eccentric = sum(radius, of('part.eccentricity'));
const onFaceplate = sum(of('part.mass'), of('part.fixtureMass'));
const middle = sum(of('rotary.faceOffset'), of('part.fixtureHeight'), ratio(of('part.height'), 2));
const distance: Expression = { max: [middle, { '-': [middle] }] };
const along = (yes: string, no: string): Expression => ({ if: [of('alongX'), of(yes), of(no)] });

export const EXPRESSIONS: readonly (readonly [need: Expression, have: Expression])[] = [
  [product(2, eccentric), of('rotary.swing')],
  [product(2, radius), of('rotary.faceplate')],
  [onFaceplate, of('rotary.payload')],
  [of('part.angle'), of('rotary.tilt')],
  [ratio(product(onFaceplate, 9.80665, distance), 1000), of('rotary.tiltMoment')],
  [ratio(product(2, of('part.force'), eccentric), 1000), of('rotary.brake')],
  [sum(of('rotary.mass'), of('part.mass'), of('part.fixtureMass')), of('machine.load')],
  [ratio(of('part.power'), 0.8), of('machine.power')],
  [of('part.torque'), of('machine.torque')],
  [product(2, sum(radius, of('part.eccentricity'), 10)), along('machine.travelX', 'machine.travelY')],
  [
    product(2, sum(of('rotary.faceOffset'), of('part.fixtureHeight'), of('part.height'), 10)),
    along('machine.travelY', 'machine.travelX'),
  ],
  [
    sum(
      of('rotary.centerHeight'),
      of('rotary.faceOffset'),
      of('part.fixtureHeight'),
      of('part.height'),
      25,
      190,
    ),
    sum(of('machine.noseTop'), of('raised')),
  ],
];
