import { spawnSync } from 'node:child_process';
import { existsSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { folderWith } from '../temporary-folder.ts';

/** The program as it is shipped; "npm test" builds it first. */
const PROGRAM = join(import.meta.dirname, '..', '..', 'dist', 'main.js');
const HEAD = 'format: fivesides-answers/1\nunits: mm\n';
const CATALOG = 'format: fivesides-catalog/1\nunits: mm\n';

beforeAll(() => {
  if (!existsSync(PROGRAM)) throw new Error('build the program first: npm run build');
});

function run(argv: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...argv], {
    encoding: 'utf8',
    input,
    timeout: 30_000,
  });
  return { status, stdout, stderr };
}

/** Exit code 2, nothing on standard output, one line per problem, no stack trace. */
function expectRefused(argv: readonly string[], lines: readonly (string | RegExp)[], input = ''): void {
  const { status, stdout, stderr } = run(argv, input);
  const printed = stderr.split('\n').filter((line) => line !== '');
  expect({ status, stdout, lines: printed.length }).toEqual({ status: 2, stdout: '', lines: lines.length });
  for (const [index, line] of lines.entries()) expect(printed[index]).toMatch(line);
  expect(stderr).not.toMatch(/^\s+at |node:internal|ZodError/m);
}

const aliasBomb = [
  'a: &a [1, 1, 1, 1, 1, 1, 1, 1, 1, 1]',
  ...'bcdefg'.split('').map((name, index) => {
    const before = 'abcdefg'[index];
    return `${name}: &${name} [${Array.from({ length: 10 }, () => `*${before}`).join(', ')}]`;
  }),
].join('\n');

describe('decide on what nobody should send', () => {
  const folder = folderWith({
    'keys.yaml': `${HEAD}parts:\n  - name: A\n    mass: 1\n    mass: 2\n`,
    'proto.yaml': `${HEAD}__proto__: { polluted: true }\nparts: [{ name: A }]\n`,
    'bomb.yaml': aliasBomb,
    'numbers.yaml': `${HEAD}parts:\n  - { name: A, mass: .nan, depthTop: .inf, tolerance: 1e999 }\n`,
    'sizes.yaml': `${HEAD}parts:\n  - { name: A, shape: block, size: [90, -60, 0] }\n`,
    'tilt.yaml': `${HEAD}parts:\n  - { name: A, approaches: [{ slant: [60, 20] }] }\n`,
    'deep.json': '['.repeat(100_000),
    'escape.yaml': `${HEAD}parts: [{ name: "\\e[2J\\e]0;x\\a" }]\n`,
  });
  const at = (name: string) => join(folder, name);

  test.each<[string, readonly RegExp[]]>([
    ['keys.yaml', [/keys\.yaml:6:5: the key "mass" stands twice/]],
    ['proto.yaml', [/proto\.yaml:3:1: the key "__proto__" stands here/]],
    ['bomb.yaml', [/bomb\.yaml:5:\d+: aliases unfold into more than/]],
    [
      'numbers.yaml',
      [/numbers\.yaml:4:22: ".nan"/, /numbers\.yaml:4:38: ".inf"/, /numbers\.yaml:4:55: "1e999"/],
    ],
    [
      'sizes.yaml',
      [/sizes\.yaml:4:41: parts\[A\]\.size\[1\] is -60/, /sizes\.yaml:4:46: parts\[A\]\.size\[2\] is 0/],
    ],
    ['tilt.yaml', [/tilt\.yaml:4:38: parts\[A\]\.approaches\[0\]\.slant runs the wrong way, from 60 to 20/]],
    ['deep.json', [/deep\.json:1:\d+: more than 60 levels/]],
    ['escape.yaml', [/escape\.yaml:3:17: parts\[\\u\{1b\}\[2J/]],
    ['nothing.yaml', [/nothing\.yaml:0:0: there is no such file/]],
    ['', [/:0:0: this is a folder, expected a file/]],
  ])('%s', (name, lines) => {
    expectRefused(['decide', at(name)], lines);
  });

  test('ten megabytes', () => {
    const large = at('large.yaml');
    writeFileSync(large, HEAD);
    truncateSync(large, 10 * 1024 * 1024);
    expectRefused(['decide', large], [/large\.yaml:0:0: the file has 10\.0 MB/]);
  });

  test('bytes that are no text', () => {
    const bytes = at('bytes.yaml');
    writeFileSync(bytes, Buffer.concat([Buffer.from(HEAD), Buffer.from([0xc3, 0x28])]));
    expectRefused(['decide', bytes], [/bytes\.yaml:3:1: a byte that is not UTF-8/]);
  });

  test('standard input is named as such', () => {
    expectRefused(['decide', '-'], [/^\(standard input\):3:8: parts has 0 entries/], `${HEAD}parts: []`);
    expectRefused(['decide', '-'], [/^\(standard input\):0:0: the file is empty/]);
  });

  test('answers and catalog that are both wrong are both told', () => {
    const catalog = folderWith({ 'c.yaml': `${CATALOG}machines: [{ id: oak }]` });
    expectRefused(
      ['decide', at('sizes.yaml'), '--catalog', catalog],
      [/sizes\.yaml/, /sizes\.yaml/, /c\.yaml:3:12: machines\[oak\]\.name is missing/, /kind is missing/],
    );
  });
});

describe('a catalog that nobody should send', () => {
  test('the tilt the wrong way round, beyond the circle; ids twice; negative sizes', () => {
    const folder = folderWith({
      'a.yaml': `${CATALOG}rotaries:
  - { id: wren, name: Wren, class: trunnion, tilt: [110, -20] }
  - { id: wren, name: Wren, class: trunnion, tilt: [-200, 0], swing: -1 }
`,
    });
    expectRefused(
      ['catalog', 'check', folder],
      [
        /a\.yaml:4:52: rotaries\[wren\]\.tilt runs the wrong way, from 110 to -20/,
        /a\.yaml:5:11: rotaries\[wren\]\.id stands at .*a\.yaml:4:11 too/,
        /a\.yaml:5:53: rotaries\[wren\]\.tilt\[0\] is -200/,
        /a\.yaml:5:70: rotaries\[wren\]\.swing is -1/,
      ],
    );
  });

  test('a file instead of a folder, a folder that is not there', () => {
    expectRefused(['catalog', 'check', PROGRAM], [/:0:0: this is a file, expected the folder of a catalog/]);
    expectRefused(['catalog', 'check', join(PROGRAM, 'x')], [/:0:0: there is no such folder/]);
  });
});

describe('the shipped program', () => {
  test('says its version, and what is wrong with a command line in one line', () => {
    expect(run(['--version'])).toMatchObject({ status: 0, stderr: '' });
    expect(run(['decid'])).toMatchObject({ status: 2, stdout: '' });
    expect(run(['--no-input'])).toMatchObject({ status: 2, stdout: '' });
  });

  test('ends quietly when nobody reads on', () => {
    const catalog = join(PROGRAM, '..', '..', 'catalog-demo');
    const script = `"${process.execPath}" "${PROGRAM}" catalog check "${catalog}" | true; echo "\${PIPESTATUS[0]}"`;
    const { stdout, stderr } = spawnSync('bash', ['-c', script], { encoding: 'utf8', timeout: 30_000 });
    expect({ stdout, stderr }).toEqual({ stdout: '0\n', stderr: '' });
  });

  test('a fault of its own is said in a line; the stack shows only when it is asked for', () => {
    const broken = folderWith({
      'break.mjs': "process.stdout.write = () => { throw new Error('no paper'); };\n",
    });
    const argv = ['--import', join(broken, 'break.mjs'), PROGRAM, '--version'];
    const faulty = (env: NodeJS.ProcessEnv) =>
      spawnSync(process.execPath, argv, {
        encoding: 'utf8',
        env: { ...process.env, ...env },
        timeout: 30_000,
      });
    expect(faulty({})).toMatchObject({
      status: 1,
      stderr: 'fivesides: a fault of the program: no paper. FIVESIDES_DEBUG=1 shows where.\n',
    });
    expect(faulty({ FIVESIDES_DEBUG: '1' }).stderr).toMatch(/no paper\n\s+at /);
  });
});
