import { readdir, readFile, writeFile } from 'node:fs/promises';

/** Folder of the package that a bundled file comes from; undefined for a file of our own. */
const packageOf = (input) =>
  /^(?:.*?)(node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+)\//.exec(input)?.[1];

/** Folders of all packages of which something is in the bundle, by name. */
export function packagesIn(metafile) {
  const inputs = Object.values(metafile.outputs).flatMap((output) =>
    Object.entries(output.inputs).flatMap(([input, { bytesInOutput }]) => (bytesInOutput > 0 ? [input] : [])),
  );
  return [...new Set(inputs.map(packageOf).filter((folder) => folder !== undefined))].sort();
}

const LICENSE_FILE = /^(licen[cs]e|copying|notice)(\.(md|txt))?$/i;

/** Writes the notices of the packages that are bundled: name, version, license and its text. */
export async function writeThirdParty(metafile, file, root = new URL('..', import.meta.url)) {
  const notices = await Promise.all(
    packagesIn(metafile).map((folder) => noticeOf(new URL(`${folder}/`, root))),
  );
  const head = 'This program contains the packages below, each under its own license.\n';
  await writeFile(file, [head, ...notices].join(`\n${'-'.repeat(72)}\n\n`));
}

async function noticeOf(folder) {
  const { name, version, license, author } = JSON.parse(
    await readFile(new URL('package.json', folder), 'utf8'),
  );
  const files = (await readdir(folder)).filter((each) => LICENSE_FILE.test(each)).sort();
  const texts = await Promise.all(files.map((each) => readFile(new URL(each, folder), 'utf8')));
  const by = typeof author === 'string' ? author : (author?.name ?? 'its authors');
  const text =
    texts.length > 0
      ? texts.map((each) => each.trim()).join('\n\n')
      : `By ${by}; the package holds no text of its license.`;
  return `${name} ${version}, ${license}\n\n${text}\n`;
}
