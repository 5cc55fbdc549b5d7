import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { MEASURES } from '../../src/questions/answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import { SECTIONS } from '../../src/questions/question.ts';
import { NOT_SURE } from '../../src/questions/ranges.ts';
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
};

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
      const known: readonly string[] = [...CHECK_IDS, ...STAGES, ...MEASURES];
      expect(readBy.filter((reader) => !known.includes(reader))).toEqual([]);
      if (readBy.length === 0) expect(Object.keys(ASKED_ALL_THE_SAME)).toContain(id);
      else expect(Object.keys(ASKED_ALL_THE_SAME)).not.toContain(id);
    },
  );

  test.each(QUESTIONS.map((question) => [question.id, question] as const))(
    '%s asks in whole sentences about the part by its name',
    (_, question) => {
      const about = { part: 'Lock gate hinge', units: 'mm', currency: 'EUR' } as const;
      expect(question.ask(about)).toMatch(/[?.]$/);
      expect(question.hint === '' || /[.?]$/.test(question.hint), question.hint).toBe(true);
      expect(`${question.ask(about)}${question.hint}${question.why}`).not.toMatch(/[\u2500-\u28ff]/);
    },
  );

  test('shows the range that the rules take for an answer that is not sure', () => {
    const ranges: Readonly<Record<string, unknown>> = NOT_SURE;
    for (const { path, unsure, id } of QUESTIONS) {
      if (unsure.as === 'range') expect(unsure.range, id).toBe(ranges[path]);
    }
  });
});
