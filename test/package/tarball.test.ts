import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { cannot } from '../faults/program.ts';
import { folderWith } from '../temporary-folder.ts';

const REPOSITORY = join(import.meta.dirname, '..', '..');
const LONGEST_MS = 200_000;
/** Other versions of Node that the packed program is run with, by their paths; `npm run long` names them. */
const NODES = [
  process.execPath,
  ...(process.env.FIVESIDES_NODES ?? '').split(':').filter((path) => path !== ''),
];

let folder = '';
let installed = '';

function ran(command: string, args: readonly string[], cwd: string) {
  // nothing of the project, or of whoever runs the tests, is to help
  const env = { PATH: process.env.PATH ?? '', HOME: folder, XDG_STATE_HOME: join(folder, 'state') };
  const { status, stdout, stderr } = spawnSync(command, [...args], {
    cwd,
    env,
    encoding: 'utf8',
    timeout: LONGEST_MS,
  });
  return { status, stdout, stderr };
}

/** Packed as it is built, and installed into an empty folder without asking the registry for anything. */
beforeAll(() => {
  folder = folderWith({});
  const packed = ran('npm', ['pack', '--ignore-scripts', '--pack-destination', folder], REPOSITORY);
  expect(packed.status, packed.stderr).toBe(0);
  const [tarball = ''] = readdirSync(folder).filter((name) => name.endsWith('.tgz'));
  mkdirSync(join(folder, 'shop'));
  const flags = ['--offline', '--omit=dev', '--no-audit', '--no-fund'];
  const install = ran('npm', ['install', ...flags, join(folder, tarball)], join(folder, 'shop'));
  expect(install.status, install.stderr).toBe(0);
  installed = join(folder, 'shop', 'node_modules', 'fivesides');
});

test('what is installed is the program, its demo, its schemas and its papers, and no other package', () => {
  const packages = readdirSync(join(folder, 'shop', 'node_modules')).filter((name) => !name.startsWith('.'));
  expect(packages).toEqual(['fivesides']);
  const wanted = ['DEVELOPERS.md', 'LICENSE', 'README.md', 'catalog-demo', 'dist', 'package.json', 'schemas'];
  expect(readdirSync(installed).sort()).toEqual(wanted.sort());
  expect(existsSync(join(folder, 'shop', 'node_modules', '.bin', 'fivesides'))).toBe(true);
});

test('by its name it says its version', () => {
  const { version }: { version: string } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8'));
  const { status, stdout } = ran(
    join(folder, 'shop', 'node_modules', '.bin', 'fivesides'),
    ['--version'],
    folder,
  );
  expect({ status, stdout }).toEqual({ status: 0, stdout: `${version}\n` });
});

const versionOf = (node: string): string =>
  spawnSync(node, ['--version'], { encoding: 'utf8' }).stdout?.trim() || `${node}, which does not run`;

describe.each(NODES.map((node) => [versionOf(node), node]))('with Node %s', (_, node) => {
  const run = (...args: readonly string[]) =>
    ran(node, [join(installed, 'dist', 'main.js'), ...args], folder);

  test('it checks its catalog, explains, gives a lesson and decides', () => {
    expect(run('catalog', 'check', join(installed, 'catalog-demo'))).toMatchObject({ status: 0, stderr: '' });
    expect(run('explain', 'swing').stdout).toContain('THE USUAL MISTAKE');
    expect(run('lesson').stdout).toContain('part-size');
    const decided = run(
      'decide',
      join(installed, 'catalog-demo', 'shop-nothing-passes.answers.yaml'),
      '--catalog',
      join(installed, 'catalog-demo'),
      '--format',
      'markdown',
      '--out',
      'why.md',
    );
    expect(decided.stderr).toContain('written to why.md');
    expect(decided.status).toBe(3);
    expect(readFileSync(join(folder, 'why.md'), 'utf8')).toMatch(/^# /);
  });

  test('it asks line by line', () => {
    const { status, stderr, stdout } = spawnSync(
      node,
      [join(installed, 'dist', 'main.js'), '--plain', '--session', 'kept.json'],
      { cwd: folderWith({}), input: 'mm\n', encoding: 'utf8', timeout: LONGEST_MS },
    );
    expect({ status, stderr }).toEqual({ status: 4, stderr: '' });
    expect(stdout).toContain('kept.json');
  });
});

/** A network of its own in which there is nothing. */
const ALONE = 'unshare -rn';
const why = cannot(`${ALONE} true`);

describe.skipIf(why !== null)(
  `without any network${why === null ? '' : `, which cannot be taken away here: ${why}`}`,
  () => {
    const alone = (...args: readonly string[]) =>
      ran('unshare', ['-rn', process.execPath, join(installed, 'dist', 'main.js'), ...args], folder);

    test('there is none, and everything works', () => {
      const reached = ran('unshare', ['-rn', process.execPath, '-e', REACHES], folder);
      expect(reached.stdout).toBe('ENETUNREACH\n');
      expect(alone('catalog', 'check', join(installed, 'catalog-demo'))).toMatchObject({
        status: 0,
        stderr: '',
      });
      expect(alone('explain', 'swing').status).toBe(0);
      expect(
        alone('decide', join(installed, 'catalog-demo', 'shop-nothing-passes.answers.yaml')).status,
      ).toBe(3);
    });
  },
);

/** That the network is really away: an address from the range for documents (RFC 5737). */
const REACHES = `require('net').connect(9, '192.0.2.1').on('error', ({ code }) => console.log(code))`;

test('nothing in the program can ask a network', () => {
  const asks = readdirSync(join(REPOSITORY, 'dist'))
    .filter((name) => name.endsWith('.js'))
    .flatMap((name) => {
      const text = readFileSync(join(REPOSITORY, 'dist', name), 'utf8');
      return [...text.matchAll(/["'](?:node:)?(https?|http2|net|tls|dgram|dns)["']/g)]
        .filter(({ index }) => /(?:from|import|require)\s*\(?\s*$/.test(text.slice(index - 12, index)))
        .map(([, what]) => `${name}: ${what}`);
    });
  expect(asks).toEqual([]);
});
