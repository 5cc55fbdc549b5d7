import { Document, isCollection, Scalar, visit } from 'yaml';
import { escapeInQuotes } from '../display-text.ts';

/**
 * A value as a YAML file that reads back as the same value; short lists on one line. Strings with characters
 * that could steer a display are quoted, and those characters written as escapes.
 */
export function answersYaml(value: unknown): string {
  const document = new Document(value, { aliasDuplicateObjects: false });
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
