import { Document, isCollection, Scalar, visit } from 'yaml';
import type { Answers } from '../../questions/answers.ts';
import { answersToFile } from '../../questions/write-answers.ts';
import { escapeInQuotes } from '../display-text.ts';

/**
 * Answers as a YAML file in millimeters that reads back as the same answers; short lists on one line. Strings
 * with characters that could steer a display are quoted, and those characters written as escapes.
 */
export function answersYaml(answers: Answers): string {
  const document = new Document(answersToFile(answers, { units: 'mm' }).data, {
    aliasDuplicateObjects: false,
  });
  visit(document, {
    Seq: (_key, node) => {
      node.flow = node.items.every((item) => !isCollection(item) || item.items.length < 3);
    },
    Scalar: (_key, node) => {
      if (typeof node.value === 'string' && escapeInQuotes(node.value) !== node.value) {
        node.type = Scalar.QUOTE_DOUBLE;
      }
    },
  });
  return escapeInQuotes(document.toString({ lineWidth: 0, flowCollectionPadding: false })).trimEnd();
}
