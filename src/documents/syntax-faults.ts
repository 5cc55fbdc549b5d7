import type { YAMLError } from 'yaml';
import type { NodeFault } from './plain-data.ts';

/** What is usually behind an error of the parser, and what to write instead. */
const WORDS: Readonly<Partial<Record<YAMLError['code'], readonly [found: string, expected: string]>>> = {
  TAB_AS_INDENT: ['a tab indents this line', 'expected spaces'],
  BAD_INDENT: ['this line is indented unlike the lines it belongs to', 'expected the same indentation'],
  BAD_SCALAR_START: ['a text cannot begin with this sign', 'expected quotes around the text'],
  BLOCK_AS_IMPLICIT_KEY: [
    'a second colon stands in this line',
    'expected quotes around a text with a colon in it',
  ],
  MULTILINE_IMPLICIT_KEY: ['this key runs over several lines', 'expected a key and a colon in one line'],
  KEY_OVER_1024_CHARS: ['this key is longer than 1024 characters', 'expected a colon after the key'],
  BAD_DQ_ESCAPE: [
    'a backslash stands before a sign that has no such meaning',
    'expected two backslashes for one',
  ],
  TAG_RESOLVE_FAILED: [
    'a tag (a word after an exclamation mark) stands here',
    'expected the value without it',
  ],
  MULTIPLE_DOCS: ['a second document begins here', 'expected one document in a file'],
};

/** An error of the parser as a fault of ours. */
export function syntaxFault(error: YAMLError): NodeFault {
  const closing = /end with an? ([\]}])/.exec(error.message)?.[1];
  if (closing !== undefined) {
    return {
      offset: error.pos[0],
      found: 'a bracket before this is still open',
      expected: `expected ${closing}`,
    };
  }
  const [found, expected] = WORDS[error.code] ?? [
    `this is not YAML: ${error.message}`,
    'expected valid YAML or JSON',
  ];
  return { offset: error.pos[0], found, expected };
}
