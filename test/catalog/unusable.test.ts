import { expect, test } from 'vitest';
import { readCatalogFiles } from '../../src/catalog/read.ts';
import { unusableIn } from '../../src/catalog/unusable.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';
import { decide } from '../../src/rules/decide.ts';
import { folderWith } from '../temporary-folder.ts';

/** Rotaries and mills of many sizes, so that some pairs can and some cannot. */
const CATALOG = `format: fivesides-catalog/1
units: mm
rotaries:
  - { id: wren, name: Wren, class: single-axis, mass: 30, centerHeight: 120, swing: 200, hold: { axis-along-x: {} } }
  - { id: coot, name: Coot, class: trunnion, mass: 150, centerHeight: 180, faceOffset: -20, swing: 200 }
  - { id: emu, name: Emu, class: trunnion, base: { along: 700, across: 500, centerAlong: 350, centerAcross: 250 }, height: 500, mass: 900, centerHeight: 300, faceOffset: -40, swing: 400 }
  - { id: rhea, name: Rhea, class: single-support, base: { along: 400, across: 300, centerAlong: 150, centerAcross: 150 }, height: 800, mass: 60, centerHeight: 700, faceOffset: 30, swing: 200 }
  - { id: kiwi, name: Kiwi, class: trunnion, hold: {} }
  - { id: auk, name: Auk, class: trunnion }
machines:
  - { id: oak, name: Oak, kind: mill, spindle: vertical, table: { load: 400 }, noseToTable: [100, 560], axisDrives: { fitted: 0, offered: 2 } }
  - { id: ash, name: Ash, kind: mill, spindle: vertical, table: { load: 100 }, noseToTable: [100, 500], axisDrives: { fitted: 0, offered: 1 } }
  - { id: elm, name: Elm, kind: mill, spindle: vertical, table: { load: 20 } }
  - { id: fir, name: Fir, kind: mill, spindle: horizontal, table: { load: 25, slots: { along: x } } }
`;
const PIN = `format: fivesides-answers/1
units: mm
parts: [{ name: Pin, shape: block, size: [6, 6, 5], mass: 0.001, approaches: [top, sides], motion: positional }]
`;

test('what is said to be of no use passes in no arrangement, however small the part', () => {
  const folder = folderWith({ 'a.yaml': CATALOG, 'pin.answers.yaml': PIN });
  const [read, answers] = [readCatalogFiles([folder]), readAnswers(`${folder}/pin.answers.yaml`)];
  if (!read.ok || !answers.ok) throw new Error('the fixtures cannot be read');
  const told = unusableIn(read.value).map(({ found }) => found.replace(/:.*/s, ''));
  expect(told).toEqual([
    'rotaries[emu] can be used on no machine of the catalog',
    'rotaries[rhea] can be used on no machine of the catalog',
    'rotaries[kiwi] can be used on no machine of the catalog',
    'machines[fir] can use no rotary of the catalog',
  ]);
  const { arrangements } = decide(answers.value.answers, read.value.catalog, { all: true });
  const alive = arrangements.filter(({ verdict, parts }) => verdict !== 'fails' && parts.Pin !== 'fails');
  expect(alive.length).toBeGreaterThan(0);
  const useless = alive.filter(
    ({ machine, rotary }) => machine === 'fir' || ['emu', 'rhea', 'kiwi'].includes(String(rotary)),
  );
  expect(useless.map(({ id }) => id)).toEqual([]);
});

test('a catalog of rotaries alone, or of machines, is a part of one', () => {
  const [head = '', machines = ''] = CATALOG.split('machines:\n');
  const rotaries = readCatalogFiles([folderWith({ 'a.yaml': head })]);
  const mills = readCatalogFiles([
    folderWith({ 'a.yaml': `format: fivesides-catalog/1\nunits: mm\nmachines:\n${machines}` }),
  ]);
  expect([rotaries, mills].map((each) => (each.ok ? unusableIn(each.value) : each.problems))).toEqual([
    [],
    [],
  ]);
});
