// What of a declaration is no logic: words for people, the texts of errors, and the examples of checks, which are
// test data that happens to stand beside what it tests. Strings that are compared or looked up are mutated.

/** Names of properties that hold words. */
const WORDS = new Set(['what', 'name', 'formula', 'source', 'densitySource', 'unit']);

/** Constants that hold words: the sources of a table. */
const SOURCES = new Set(['VDI', 'GERE']);

/** Functions whose first arguments are words: what is measured, then its unit; of a row of materials, its sources. */
const NAMED = new Map([
  ['term', 1],
  ['fixed', 1],
  ['partInput', 2],
  ['rotaryInput', 2],
  ['machineInput', 2],
  ['shopInput', 2],
  ['caseInput', 2],
  ['row', 6],
]);

/** What several examples of a check share. */
const SHARED_BY_EXAMPLES = new Set(
  'STACK STACK_50 LOW_NOSE HOUSING PART UPRIGHT BAR LEVEL OFF BY_HAND MOVING CONTOUR'.split(' '),
);

const keyOf = ({ key }) => key?.name ?? key?.value;

function isText({ node, parent, listKey, key }) {
  if (node.type !== 'StringLiteral' && node.type !== 'TemplateLiteral') return false;
  if (parent.type === 'ObjectProperty') return parent.value === node && WORDS.has(keyOf(parent));
  if (parent.type === 'VariableDeclarator') return SOURCES.has(parent.id.name);
  return (
    parent.type === 'CallExpression' && listKey === 'arguments' && key < (NAMED.get(parent.callee.name) ?? 0)
  );
}

/** The words of an error; that it is thrown, and when, is mutated. */
const isErrorText = ({ parent, listKey }) =>
  parent?.type === 'NewExpression' && listKey === 'arguments' && /Error$/.test(parent.callee.name ?? '');

/** Stryker puts a text into an empty list: no list of these folders may hold one, so that does not compile. */
const isEmptyList = ({ node }) => node.type === 'ArrayExpression' && node.elements.length === 0;

const isExamples = ({ node }) =>
  (node.type === 'ObjectProperty' && keyOf(node) === 'examples') ||
  (node.type === 'VariableDeclarator' && SHARED_BY_EXAMPLES.has(node.id.name));

export const strykerPlugins = [
  {
    kind: 'Ignore',
    name: 'words-and-examples',
    value: {
      shouldIgnore(path) {
        if (isText(path)) return 'words for people';
        if (isErrorText(path)) return 'words of an error';
        if (isEmptyList(path)) return 'an empty list, in which a text does not compile';
        if (isExamples(path)) return 'examples of a check, which are test data';
        return undefined;
      },
    },
  },
];
