import { describe, expect, test } from 'vitest';
import { countNumbers, differences } from '../../src/verification/json-differences.ts';
import { lineDifferences } from '../../src/verification/line-differences.ts';
import { readAsWritten } from '../../src/verification/numbers-as-written.ts';

const held = (says: string, comesOut: string) => differences(readAsWritten(says), readAsWritten(comesOut));

describe('two decisions', () => {
  test('the same, however their numbers are written', () => {
    expect(held('{"a":[1.0,null,"x"]}', '{ "a": [1, null, "x"] }')).toEqual([]);
  });

  test('a number, a word, a missing key and one too many are each named with their place', () => {
    expect(held('{"a":{"b":[1,2]},"v":"holds","d":null}', '{"a":{"b":[1,3]},"v":"fails","c":7}')).toEqual([
      { where: 'a.b[1]', says: '2', comesOut: '3' },
      { where: 'v', says: '"holds"', comesOut: '"fails"' },
      { where: 'd', says: 'null', comesOut: null },
      { where: 'c', says: null, comesOut: '7' },
    ]);
  });

  test('a number that became a list, and the other way round', () => {
    expect(held('{"need":[1,2]}', '{"need":1}')).toEqual([
      { where: 'need', says: '[1,2]'.replace(/\d/g, '"$&"'), comesOut: '1' },
    ]);
  });

  test('arrangements go by their ids: one that is gone does not shift the rest', () => {
    const says = '[{"id":"b","n":2},{"id":"c","n":4}]';
    const comesOut = '[{"id":"a","n":1},{"id":"b","n":2},{"id":"c","n":3}]';
    expect(held(says, comesOut)).toEqual([
      { where: '[c].n', says: '4', comesOut: '3' },
      { where: '[a]', says: null, comesOut: '{"id":"a","n":"1"}' },
    ]);
  });

  test('numbers are counted, digits in words are not', () => {
    expect(countNumbers(readAsWritten('{"a":[1,{"b":2}],"c":"3","d":null}'))).toBe(2);
  });
});

describe('two papers', () => {
  test('the same, whatever their line ends are', () => {
    expect(lineDifferences('a\r\nb\r\n', 'a\nb\n')).toEqual([]);
  });

  test('a line that was changed stands beside what it comes out as', () => {
    expect(lineDifferences('one\ntwo 2\nthree', 'one\ntwo 3\nthree')).toEqual([
      { where: 'line 2', says: 'two 2', comesOut: 'two 3' },
    ]);
  });

  test('lines that were put in or taken out, at the beginning, inside and at the end', () => {
    expect(lineDifferences('new\na\nc', 'a\nb\nc\nd')).toEqual([
      { where: 'line 1', says: 'new', comesOut: null },
      { where: 'line 3', says: null, comesOut: 'b' },
      { where: 'line 4', says: null, comesOut: 'd' },
    ]);
  });

  test('of a long line what differs is shown, with a little around it', () => {
    const [long] = lineDifferences(
      `${'x'.repeat(200)}1${'y'.repeat(200)}`,
      `${'x'.repeat(200)}2${'y'.repeat(200)}`,
    );
    expect(long).toEqual({
      where: 'line 1',
      says: `…${'x'.repeat(30)}1${'y'.repeat(29)}…`,
      comesOut: `…${'x'.repeat(30)}2${'y'.repeat(29)}…`,
    });
  });
});
