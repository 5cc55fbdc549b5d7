import { describe, expect, it } from 'vitest';
import { textOf } from '../../src/report/blocks/inline-text.ts';
import { valueName } from '../../src/report/value-name.ts';
import { splitValuePath, valueUnit, valueWords } from '../../src/report/value-words.ts';
import { demoDecisions } from './demo-decisions.ts';
import { fixtureDecision } from './fixture.ts';

describe('A value by its path', () => {
  it.each([
    ['tools.longest', 'longest tool', 'mm'],
    ['parts[Lock gate hinge].depthSide', 'depth from the sides (Lock gate hinge)', 'mm'],
    ['parts[Lock gate hinge].size[2]', 'height (Lock gate hinge)', 'mm'],
    ['parts[Valve body].approaches[1].undercut', 'undercut angle (Valve body)', '°'],
    ['rotaries[wren].payload.tilted', 'payload with the table tilted (Wren)', 'kg'],
    ['machines[rowan].builtIn.tiltMoment', 'moment allowed on the tilt axis (Rowan)', 'N·m'],
    ['work.vise.width', 'width of a vise', 'mm'],
  ])('%s is called %s', (path, name, unit) => {
    const decision = { ...fixtureDecision(), recommended: path };
    expect(textOf(valueName(decision, path, ['recommended']), decision, { ascii: false })).toBe(name);
    expect(valueUnit(path)).toBe(unit);
  });

  it.each(['rotaries[nobody].swing', 'parts[Lock gate hinge].color', 'nothing.known'])(
    'that has no words is printed as it is: %s',
    (path) => {
      const decision = { ...fixtureDecision(), recommended: path };
      expect(textOf(valueName(decision, path, ['recommended']), decision, { ascii: false })).toBe(path);
    },
  );

  it('is taken apart even where a name holds brackets', () => {
    expect(splitValuePath('parts[Hinge [left] 2].size[0]')).toEqual({
      list: 'parts',
      name: 'Hinge [left] 2',
      key: 'size[0]',
    });
  });
});

describe('In the decisions of the demo shops', () => {
  it.each(demoDecisions())(
    'every unknown and every number that went in has words: %s',
    (_what, { unknowns, arrangements }) => {
      const inputs = arrangements.flatMap(({ checks }) => checks.flatMap((each) => Object.keys(each.inputs)));
      const paths = new Set([...unknowns.map(({ answer }) => answer), ...inputs]);
      const isPath = (path: string): boolean => path.includes('.') && !path.startsWith('assume.');
      expect([...paths].filter((path) => isPath(path) && valueWords(path) === undefined)).toEqual([]);
    },
  );
});
