import type { RouteRuleId } from '../../rules/classes/routes/rule-ids.ts';
import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import type { Finding, RouteId } from '../../rules/decision.ts';

/** Reasons in words. `{number}` and `{limit}` stand for what was worked out, `{parts}` for names of families. */

export const FINDING_WORDS: Readonly<Record<Finding, string>> = {
  suits: 'suits',
  possible: 'possible',
  'ruled out': 'ruled out',
};

/** Of what nothing rules out, but nothing passes either. */
export const NOTHING_PASSES = 'not ruled out, but nothing passes';

export const CLASS_ARGUMENT_WORDS: Readonly<Record<ClassRuleId, string>> = {
  'sides-tilt':
    'of the hours {number} have all their sides around one level axis, and at least {limit} are wanted; the others have to be tilted: {parts}',
  'sides-must-tilt': 'it does not tilt, and parts that must be held need that: {parts}',
  'sides-some-tilt': 'it holds {number} of the hours at most, because the others have to be tilted: {parts}',
  'sides-around': '{number} of the hours have all their sides around one level axis: no tilt is needed',
  'tilt-used': 'the tilt has work: {number} of the hours need it',
  'tilt-idle': 'the tilt would hardly be used: {number} of the hours need it',
  'tilt-beyond':
    'the work has to be tilted by {number}, and nothing of this kind goes beyond {limit}: {parts}',
  'tilt-short':
    'to hold nearly all of it the tilt has to reach {number}, and here it ends at {limit}: {parts}',
  'tilt-reaches': 'it tilts by up to {limit}, and {number} are needed',
  'swing-beyond': 'the work turns within {number}, and the largest of this kind has {limit}: {parts}',
  'swing-short':
    'nearly all of the work turns within {number}, and the largest of this kind has {limit}: {parts}',
  'swing-holds':
    'the largest of this kind lets a circle of {limit} turn; nearly all of the work needs {number}',
  'swing-oversized':
    'even the smallest of this kind is large for it: it lets {number} times the circle turn that the work needs',
  'mass-beyond':
    'part and fixture weigh {number}, and the strongest of this kind carries {limit} with its faceplate on edge: {parts}',
  'mass-short':
    'to hold nearly all of it {number} have to be carried with the faceplate on edge, and the strongest carries {limit}: {parts}',
  'mass-holds':
    'the strongest of this kind carries {limit} with its faceplate on edge; part and fixture weigh {number}',
  'moment-short':
    'the work pulls on the tilt axis with {number}, and the strongest of this kind holds {limit}: {parts}',
  'moment-holds': 'the work pulls on the tilt axis with {number}; the strongest of this kind holds {limit}',
  'strength-beyond':
    'the strongest of this kind carries and holds only {number} of the hours; too much for it: {parts}',
  'strength-short':
    'the strongest of this kind carries and holds {number} of the hours; too much for it: {parts}',
  'moving-stiff': 'in {number} of the hours all axes move in the cut, which wants a stiff table',
  'moving-one-support':
    'in {number} of the hours all axes move in the cut, and its tilt axis is carried at one end only',
  'moving-indexed': 'in {number} of the hours all axes move in the cut, and it has but one: {parts}',
  positional:
    'axes that stand braked while they cut are enough for nearly all of the work; {number} of the hours need axes that move',
  'bar-fits': '{number} of the hours are bar that its collets take',
  'bar-little': 'only {number} of the hours are bar that its collets take',
  'nose-takes-chucks':
    'some of this kind have a spindle nose that takes chucks; {number} of the hours are held in one: {parts}',
  'nose-missing':
    'none of this kind takes a chuck without an adapter, and {number} of the hours are held in one: {parts}',
  'spread-wide-open':
    'it is open at one end, for sizes that lie far apart: the largest need {number} times the swing of the smallest',
  'spread-wide-closed':
    'the sizes lie far apart, and it suits one size best: the largest need {number} times the swing of the smallest',
  'spread-narrow': 'the sizes lie close together: the largest need {number} times the swing of the smallest',
  'three-axis-often-light':
    '{number} of the work stays on three axes, and this kind leaves room for it or comes off',
  'three-axis-often-heavy': '{number} of the work stays on three axes, and this kind is in its way',
  'three-axis-seldom': 'only {number} of the work stays on three axes, so that it may stay on',
  'vises-fit': 'vises that find room beside it: up to {number}, wanted: {limit}',
  'vises-missing': 'vises that find room beside it: at most {number}, wanted: {limit}',
  'lifts-off': 'it can be lifted off: from {number}, and the best means of lifting takes {limit}',
  'stays-on': 'it stays on: it weighs {number} or more, and the best means of lifting takes {limit}',
  'never-lifted': 'it is never lifted off, which saves {number} swaps a year',
  'price-over': 'the cheapest arrangement with it costs {number}, and the budget is {limit}',
  'catalog-none': 'there is none in this catalog that can be set up',
  'none-passes': 'none of its arrangements in this catalog passes',
  'some-pass': 'arrangements of it that pass in this catalog: {number}',
};

export interface RouteWords {
  readonly title: string;
}

export const ROUTE_WORDS: Readonly<Record<RouteId, RouteWords>> = {
  'own-mill': { title: 'a rotary on the mill that is owned' },
  'new-mill': { title: 'a mill bought together with a rotary' },
  convertible: { title: 'a mill that comes with its rotary' },
  'built-in': { title: 'a five-axis machine with a table of its own' },
  'single-axis': { title: 'a single-axis rotary and nothing that tilts' },
};

export const ROUTE_ARGUMENT_WORDS: Readonly<Record<RouteRuleId, string>> = {
  'no-mill-owned': 'no mill of this catalog is owned',
  'route-none': 'there is nothing of this in the catalog',
  'one-axis-not-enough':
    'of the hours {number} have all their sides around one level axis, and at least {limit} are wanted; the others have to be tilted: {parts}',
  'one-axis-must-tilt': 'parts that must be held have to be tilted: {parts}',
  'one-axis-nearly': 'it holds {number} of the hours at most; the others have to be tilted: {parts}',
  'one-axis-enough': '{number} of the hours have all their sides around one level axis',
  'route-price-over': 'the cheapest costs {number}, and the budget is {limit}',
  'route-none-passes': 'no arrangement on this route passes',
  'route-some-pass': 'arrangements that pass: {number}',
  'route-covers-part': 'the best covers {number} of the hours',
  'route-covers': 'the best covers {number} of the hours',
  'route-dearer': 'the cheapest that passes costs {number}, more than the cheapest on another route',
  'route-cheapest': 'it is the cheapest route, or level with it: from {number}',
};
