import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { MEASURES } from '../../src/questions/answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import { type Question, SECTIONS } from '../../src/questions/question.ts';
import { NOT_SURE } from '../../src/questions/ranges.ts';
import { readReply } from '../../src/questions/read-reply.ts';
import { CHECK_IDS } from '../../src/rules/checks/ids.ts';
import { STAGES } from '../../src/rules/stages/index.ts';

const FOLDER = 'src/questions';

/** Files of the sections' folders that declare a question, as `section/id`. */
const declared = SECTIONS.flatMap((section) =>
  readdirSync(join(FOLDER, section))
    .filter((file) => /about(Part|Shop)</.test(readFileSync(join(FOLDER, section, file), 'utf8')))
    .map((file) => `${section}/${file.replace(/\.ts$/, '')}`),
);

/** Questions whose answers no check, stage or measure reads, and why they are asked all the same. */
const ASKED_ALL_THE_SAME: Readonly<Record<string, string>> = {
  units: 'how numbers are read and shown',
  name: 'the result speaks of each part by its name',
  'vise-height': 'what a raised machine still reaches in a vise, once the rotary is off again',
};

/** What reads answers without being a check, a stage or a measure to rank by. */
const OTHER_READERS = [
  'netPresentValue',
  // checks of the shop, as they come in
  ...['bay', 'ceiling', 'doorway', 'floor-load', 'power', 'air', 'lift', 'hook-height'],
];

const hintIn = ({ hint, hintInch }: Question, units: 'mm' | 'inch') => (units === 'mm' ? hint : hintInch);

describe('the list of questions', () => {
  test('holds every question file, and nothing else', () => {
    const listed = QUESTIONS.map(({ section, id }) => `${section}/${id}`);
    expect([...listed].sort()).toEqual([...declared].sort());
  });

  test('goes section by section, in the order of the sections', () => {
    const sections = QUESTIONS.map(({ section }) => SECTIONS.indexOf(section));
    expect(sections).toEqual([...sections].sort((a, b) => a - b));
  });

  test('uses no id twice, and no title twice', () => {
    expect(new Set(QUESTIONS.map(({ id }) => id)).size).toBe(QUESTIONS.length);
    expect(new Set(QUESTIONS.map(({ title }) => title)).size).toBe(QUESTIONS.length);
  });

  test.each(QUESTIONS.map((question) => [question.id, question] as const))(
    '%s says why it is asked and what reads it',
    (id, { why, readBy }) => {
      expect(why.length).toBeGreaterThan(20);
      const known: readonly string[] = [...CHECK_IDS, ...STAGES, ...MEASURES, ...OTHER_READERS];
      expect(readBy.filter((reader) => !known.includes(reader))).toEqual([]);
      if (readBy.length === 0) expect(Object.keys(ASKED_ALL_THE_SAME)).toContain(id);
      else expect(Object.keys(ASKED_ALL_THE_SAME)).not.toContain(id);
    },
  );

  test.each(QUESTIONS.map((question) => [question.id, question] as const))(
    '%s asks in whole sentences about the part by its name',
    (_, question) => {
      for (const units of ['mm', 'inch'] as const) {
        const about = { part: 'Lock gate hinge', units, currency: 'EUR' } as const;
        const hint = hintIn(question, units);
        expect(question.ask(about)).toMatch(/[?.]$/);
        expect(hint === '' || /[.?]$/.test(hint), hint).toBe(true);
        expect(`${question.ask(about)}${hint}${question.why}`).not.toMatch(/[\u2500-\u28ff]/);
      }
    },
  );

  test.each(QUESTIONS.map((question) => [question.id, question] as const))(
    '%s gives its examples in units that are understood, and as large in inches as in millimeters',
    (_, question) => {
      const { field } = question;
      if (field.kind !== 'quantity' && field.kind !== 'quantities') return;
      const values = (['mm', 'inch'] as const).map((units) => {
        const example = /Example: (.*?)(?:, or .*|, once .*)?\.(?= [A-Z]|$)/.exec(
          hintIn(question, units),
        )?.[1];
        if (example === undefined) return null;
        const context = { units, offer: { machines: [] } };
        const reading = readReply(field, example, context);
        if (!reading.ok) throw new Error(`${example}: ${reading.why}`);
        return [reading.value].flat().map(Number);
      });
      const [mm, inch] = values;
      mm?.forEach((value, index) => {
        expect(Math.abs((inch?.[index] ?? 0) - value), question.hintInch).toBeLessThan(0.3 * value);
      });
    },
  );

  test('shows the range that the rules take for an answer that is not sure', () => {
    const ranges: Readonly<Record<string, unknown>> = NOT_SURE;
    for (const { path, unsure, id } of QUESTIONS) {
      if (unsure.as === 'range') expect(unsure.range, id).toBe(ranges[path]);
    }
  });
});
