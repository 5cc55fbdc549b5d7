import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { buildProgram } from '../journeys/interview-program.ts';
import { folderWith } from '../temporary-folder.ts';
import { cannot, command, shell } from './program.ts';

let folder = '';
let interview = '';
beforeAll(async () => {
  interview = command(await buildProgram());
});
beforeEach(() => {
  folder = folderWith({});
});

const ANSWERS = ['mm', 'none', 'Hinge', 'block', '90 x 60 x 55', '1', ...Array(30).fill('not sure')];
const INTERVIEW = '$interview --plain --ask-all --session kept.json';
/** No file may have more than 1024 bytes: a write beyond that is taken in part, and then refused, as on a full disk. */
const SMALL = "trap '' XFSZ; ulimit -f 1; ulimit -c 0;";
const answersIn = (text: string): readonly string[] => {
  const { shop, parts } = JSON.parse(text).answers;
  return [...Object.keys(shop), ...parts.flatMap((part: object) => Object.keys(part))];
};

describe('a disk that takes only a part of what is written', () => {
  test('a paper is not half there, and that is said: 2', () => {
    const ran = shell(`${SMALL} $fivesides explain swing --format text --out why.txt`, folder);
    expect(ran.status).toBe(2);
    expect(ran.stderr).toContain(
      'fivesides: why.txt was not written: it would be larger than a file may be there.',
    );
    expect(readdirSync(folder)).toEqual([]);
  });

  test('one that is there stays as it was', () => {
    writeFileSync(join(folder, 'why.txt'), 'mine');
    expect(shell(`${SMALL} $fivesides explain swing --format text --out why.txt`, folder).status).toBe(2);
    expect(readFileSync(join(folder, 'why.txt'), 'utf8')).toBe('mine');
    expect(readdirSync(folder)).toEqual(['why.txt']);
  });

  test('of the two tables of a catalog none is there where the second finds no room', () => {
    const { status, stderr } = shell(
      `${SMALL} $fivesides catalog to-csv own --out tables`,
      folderIn({
        machines: Array.from({ length: 40 }, (_, at) => `{ id: m${at}, name: Mill ${at}, kind: mill }`),
        rotaries: ['{ id: wren, name: Wren, class: trunnion }'],
      }),
    );
    expect({ status, stderr }).toEqual({
      status: 2,
      stderr: 'tables: it would be larger than a file may be there. Nothing is written.\n',
    });
    expect(readdirSync(join(folder, 'tables'))).toEqual([]);
  });

  test('an interview says that it is not saved, and what was saved last is there', () => {
    const { stdout, stderr } = shell(`${SMALL} printf '%s\\n' "$answers" | ${INTERVIEW}`, folder, {
      interview,
      answers: ANSWERS.join('\n'),
    });
    expect(stderr).toContain('The interview could not be saved to');
    expect(stdout.replace(/\s+/g, ' ')).toContain('Your answers are NOT saved');
    expect(readdirSync(folder)).toEqual(['kept.json']);
    const kept = answersIn(readFileSync(join(folder, 'kept.json'), 'utf8'));
    expect(kept.slice(0, 2)).toEqual(['units', 'own-mill']);
    expect(kept.length).toBeLessThan(ANSWERS.length);
  });
});

/** A catalog in the folder, under the name `own`. */
function folderIn(lists: Readonly<Record<string, readonly string[]>>): string {
  mkdirSync(join(folder, 'own'));
  const rows = Object.entries(lists).map(
    ([list, each]) => `${list}:\n${each.map((row) => `  - ${row}\n`).join('')}`,
  );
  writeFileSync(join(folder, 'own', 'a.yaml'), `format: fivesides-catalog/1\nunits: mm\n${rows.join('')}`);
  return folder;
}

/** A disk of its own, of a few pages; nobody outside sees it. */
const ON_SMALL_DISK = 'unshare -rm bash -c';
const why = cannot(`${ON_SMALL_DISK} 'mount -t tmpfs -o size=32k tmpfs /mnt'`);

describe.skipIf(why !== null)(
  `a disk of its own${why === null ? '' : `, which there is not here: ${why}`}`,
  () => {
    test('is full while an interview is kept there, and has room again in the end: every answer is there', () => {
      const script = `
      mount -t tmpfs -o size=32k tmpfs disk && cd disk || exit 99
      # a page is left: the first answer finds room, and then nothing beside it
      head -c 28672 /dev/zero > filler
      told() { for _ in $(seq 300); do grep -q 'disk is full' ../told.txt && return; sleep 0.1; done; }
      { printf '%s\\n' "$answers"; told; rm filler; } | ${INTERVIEW} > ../said.txt 2> ../told.txt
      cp kept.json ..
    `;
      mkdirSync(join(folder, 'disk'));
      const { status, stderr } = shell(`${ON_SMALL_DISK} "$script"`, folder, {
        script,
        interview,
        answers: ANSWERS.join('\n'),
      });
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      const [said, told] = ['said.txt', 'told.txt'].map((name) => readFileSync(join(folder, name), 'utf8'));
      expect(told).toContain('the disk is full');
      expect(said?.replace(/\s+/g, ' ')).toContain('goes on with them.');
      expect(answersIn(readFileSync(join(folder, 'kept.json'), 'utf8')).length).toBeGreaterThan(25);
    });
  },
);
