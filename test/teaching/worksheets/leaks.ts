import { formatQuantity } from '../../../src/quantities/format-quantity.ts';
import { writeNumber } from '../../../src/teaching/formula/write-formula.ts';
import { worksheetFigures } from '../../../src/teaching/worksheets/exports.ts';
import type { Sheet } from '../../../src/teaching/worksheets/sheet.ts';
import { figureSection } from '../../../src/teaching/worksheets/sheet-figures.ts';

/** Numbers that the rules work out and a sheet may give, as long as nobody asks for them. */
const WORKED_OUT = /^parts\[.*\]\.tilt$|^capital$|^price$/s;

/** How a report says that something does not do. */
const VERDICT = /does not pass|\bneeded, .* there\b| – .* fails/g;

/** What stands at the bar of the scale. */
const SCALE = /^.*\(1 : [\d.]+ in print.*$/gm;

/** Every text on a sheet, or in its pictures, that tells what a step comes to and is not among what is given. */
export function leaksOf(sheet: Sheet, markdown: string): readonly string[] {
  const lines = sheet.groups.flatMap((group) => group.lines);
  const pictures = worksheetFigures(sheet).map(({ text }) =>
    text.replace(/<[^>]*>/g, '\n').replace(SCALE, ''),
  );
  const told = [
    ...markdown.matchAll(VERDICT),
    ...pictures.flatMap((text) => [...text.matchAll(VERDICT)]),
  ].map(([text]) => `it tells what comes out: ${text}`);
  const onPaper = plain(markdown);
  const inPictures = pictures.map(plain);
  const measured = measuresOf(sheet);
  const held = lines.filter(({ input }) => {
    const [, part] = /^parts\[(.*)\]\.held$/s.exec(input) ?? [];
    return sheet.ready.lesson.steps.some(({ asked }) => asked.kind === 'verdict' && asked.part === part);
  });
  const passing = lines.filter(({ input }) =>
    /^kinds\[.*\]\.arrangements of this kind that pass$/.test(input),
  );
  const asksVerdicts = sheet.ready.lesson.steps.some(({ asked }) => asked.kind === 'verdict');
  const verdicts = [...held, ...(asksVerdicts ? passing : [])].map(
    ({ input }) => `${input} is given, and its verdicts are asked for`,
  );
  const values = sheet.ready.keys.flatMap((key, index): readonly string[] => {
    // a count without a unit is written everywhere: the number of a step, of points
    if (key.kind !== 'number' || key.unit === '') return [];
    const given = lines.filter(({ value }) => Math.abs(value - key.value) <= 1e-9 * Math.abs(key.value));
    const derived = given.filter(({ input }) => WORKED_OUT.test(input));
    if (derived.length > 0) return [`step ${index + 1}: ${derived[0]?.input} is given and asked for`];
    if (given.length > 0) return [];
    return textsOf(key.value, key.unit, sheet.currency).flatMap((text) =>
      holds(onPaper, text) ||
      (!measured.some((each) => holds(each, text)) && inPictures.some((place) => holds(place, text)))
        ? [`step ${index + 1}: ${text} stands in it`]
        : [],
    );
  });
  return [...told, ...verdicts, ...values];
}

/** What the pictures give: answers and catalog values, one of which may be as long as what is asked for. */
function measuresOf(sheet: Sheet): readonly string[] {
  const blocks = figureSection(sheet)?.blocks ?? [];
  const scenes = blocks.flatMap((block) => (block.kind === 'figure' ? [block.figure.scene] : []));
  const dimensions = scenes.flatMap(({ panels }) => panels.flatMap((panel) => panel.dimensions));
  return dimensions.filter(({ path }) => path[0] === 'inputs').map(({ text }) => plain(text));
}

/** As it would be written, in all ways. */
function textsOf(value: number, unit: string, currency: string): readonly string[] {
  const options = [{ currency }, { currency, shownIn: 'inch' as const }];
  const all = options.map((each) => formatQuantity(value, unit, each));
  return [...new Set([...all, `${writeNumber(value)} ${unit === 'money' ? currency : unit}`])].map(plain);
}

/** Thin and unbroken spaces as spaces, and none between digits. */
const plain = (text: string): string =>
  text.replace(/[\u00a0\u2009\u202f]/g, ' ').replace(/(?<=\d) (?=\d{3}\b)/g, '');

function holds(place: string, text: string): boolean {
  for (let at = place.indexOf(text); at >= 0; at = place.indexOf(text, at + 1)) {
    const before = place[at - 1] ?? ' ';
    const behind = place[at + text.length] ?? ' ';
    if (!/[\d.−-]/.test(before) && !/[\w²³]/.test(behind)) return true;
  }
  return false;
}
