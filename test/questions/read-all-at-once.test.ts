import { expect, test } from 'vitest';
import { describeProblem } from '../../src/documents/problem.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';

test('a doubled key, a number that is none, a wrong word and a wrong size come at once, each once', () => {
  const text = [
    'format: fivesides-answers/1',
    'units: mm',
    'parts:',
    '  - name: A',
    '    name: B',
    '    shape: blok',
    '    size: [-1, 2, .nan]',
    '    material: aluminium',
  ].join('\n');
  const read = readAnswers('a.yaml', text);
  const said = read.ok ? [] : read.problems.map(describeProblem);
  expect(said.map((each) => each.split(': ')[0])).toEqual([
    'a.yaml:5:5',
    'a.yaml:6:12',
    'a.yaml:7:12',
    'a.yaml:7:19',
    'a.yaml:8:15',
  ]);
  expect(said[1]).toContain('(did you mean "block"?)');
  expect(said[4]).toContain('(did you mean "aluminum-wrought"?)');
});
