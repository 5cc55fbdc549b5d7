import type { Class } from '../../catalog/catalog.ts';
import type { MaterialId } from '../../mechanics/forces/materials.ts';
import type { Approach, Part } from '../../questions/answers.ts';
import { type Block, heading, list, paragraph, table } from '../../report/blocks/block.ts';
import { codeData, data, type Inline, say, words } from '../../report/blocks/inline.ts';
import { arrangementName, machineName, partName, rotaryName } from '../../report/names.ts';
import { CLASS_WORDS, CLEARANCE_WORDS, PLATE_WORDS } from '../../report/wording/arrangement.ts';
import { MATERIAL_WORDS } from '../../report/wording/materials.ts';
import type { Arrangement } from '../../rules/decision.ts';
import { at, type Explained, rootOf } from '../explained.ts';
import type { GivenGroup } from './given-lines.ts';
import type { Sheet } from './sheet.ts';
import { givenText } from './value-text.ts';

/** The tables of what is given, each with what is said in words. */
export function givenSections(sheet: Sheet): readonly Explained[] {
  return sheet.groups.map((group) => groupSection(sheet, group));
}

function groupSection(sheet: Sheet, group: GivenGroup): Explained {
  const { ready, options, currency } = sheet;
  const { lines, id } = group;
  const facts = factsOf(sheet, group);
  const worked = {
    id,
    lines: lines.map(({ label, words: what, value, unit }) => ({
      label,
      what,
      text: givenText(value, unit, options.units, currency),
    })),
    facts,
  };
  const rows = lines.map((_, index) => [
    [codeData(at('lines', index, 'label'))],
    [data(at('lines', index, 'what'))],
    [data(at('lines', index, 'text'))],
  ]);
  const blocks: readonly Block[] = [
    heading(3, titleOf(sheet, group)),
    ...(facts.length === 0
      ? []
      : [list(facts.map((_, index) => say`${data(at('facts', index, 0))}: ${data(at('facts', index, 1))}`))]),
    ...(rows.length === 0
      ? []
      : [
          table(
            [
              [say`Label`, 'left'],
              [say`What it is`, 'left'],
              [say`Value`, 'right'],
            ],
            rows,
          ),
        ]),
    ...(facts.length + rows.length === 0
      ? [paragraph(say`Nothing is added, and nothing stands under it.`)]
      : []),
  ];
  return { root: rootOf(ready.decision, worked), blocks };
}

function titleOf({ ready: { decision } }: Sheet, { kind, id }: GivenGroup): readonly Inline[] {
  const own = at('id');
  switch (kind) {
    case 'part':
      return say`The part: ${partName(decision, id, own)}`;
    case 'rotary':
      return say`The rotary: ${rotaryName(decision, id, own)}`;
    case 'kind':
      return say`The kind of rotary: ${words(CLASS_WORDS[id as Class].title)}`;
    case 'machine':
      return say`The machine: ${machineName(decision, id, own)}`;
    case 'arrangement':
      return say`As it is set up: ${arrangementName(decision, id, own)}`;
    case 'shop':
      return say`The shop`;
    case 'material':
      return say`The material: ${Object.hasOwn(MATERIAL_WORDS, id) ? words(MATERIAL_WORDS[id as MaterialId]) : data(own)}`;
    case 'assumption':
      return say`Taken as usual`;
  }
}

type Fact = readonly [what: string, is: string];

function factsOf({ ready: { lesson, decision } }: Sheet, { kind, id }: GivenGroup): readonly Fact[] {
  if (kind === 'part') return lesson.answers.parts.filter(({ name }) => name === id).flatMap(partFacts);
  const arrangement = decision.arrangements.find((each) => each.id === id);
  return kind === 'arrangement' && arrangement !== undefined ? setUpFacts(arrangement) : [];
}

const KIND = (each: Approach): string =>
  typeof each === 'string' ? each : 'slant' in each ? 'a slant' : 'an undercut';

function partFacts({ shape, stands, material, approaches, bottom, motion, holding }: Part): readonly Fact[] {
  const facts: readonly (readonly [string, string | false])[] = [
    [
      'shape',
      shape !== 'unknown' && (shape === 'round' && stands !== 'unknown' ? `${shape}, ${stands}` : shape),
    ],
    ['material', material !== 'unknown' && MATERIAL_WORDS[material]],
    ['cut from', approaches !== 'unknown' && approaches.map(KIND).join(', ')],
    ['bottom', bottom === true && 'cut too'],
    ['rotary axes in the cut', motion !== 'unknown' && MOTION_WORDS[motion]],
    ['held by', holding.by !== 'unknown' && holding.by],
  ];
  return facts.flatMap(([what, is]) => (is === false ? [] : [[what, is] as const]));
}

const MOTION_WORDS = {
  positional: 'they stand braked',
  simultaneous: 'all of them move',
  surfaces: 'the tilt stands still, the other moves',
} as const;

function setUpFacts({ class: kind, clearance, plates }: Arrangement): readonly Fact[] {
  const added = clearance.map((each) => CLEARANCE_WORDS[each]);
  const under = plates.map(({ why }) => PLATE_WORDS[why]);
  return [
    ['kind', CLASS_WORDS[kind].title],
    ['additions', added.length === 0 ? 'none' : added.join(', ')],
    ['plates', under.length === 0 ? 'none' : under.join(', ')],
  ];
}
