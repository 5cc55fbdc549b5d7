import { expect, test } from 'vitest';
import { verifyCommand } from '../../src/commands/verify.ts';
import { markdownReport } from '../../src/report/index.ts';
import { decide } from '../../src/rules/decide.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';
import { folderWith } from '../temporary-folder.ts';

async function run(text: string) {
  const file = `${folderWith({ 'paper.md': text })}/paper.md`;
  const results: string[] = [];
  const remarks: string[] = [];
  const code = await verifyCommand(file, {
    result: (line) => results.push(line.replaceAll(file, 'paper.md')),
    remark: (line) => remarks.push(line.replaceAll(file, 'paper.md')),
  });
  return { code, results, remarks };
}

function paper(): string {
  const all = demoCatalog();
  const catalog = {
    ...all,
    rotaries: all.rotaries.filter(({ id }) => id === 'plover'),
    machines: all.machines.filter(({ id }) => id === 'rowan'),
  };
  return markdownReport(decide(demoAnswers('shop-own-mill').answers, catalog, { flips: [], ranges: true }));
}

test('a paper as it was written: 0, and how much was worked out again', async () => {
  const { code, results, remarks } = await run(paper());
  expect([code, remarks]).toEqual([0, []]);
  expect(results).toEqual([
    expect.stringMatching(
      /^\d+ arrangements were judged again from what paper\.md carries: \d+ numbers, and every line, come out the same\.$/,
    ),
  ]);
});

test('one that was changed: 1, a line for each difference, and how many there are', async () => {
  const { code, results, remarks } = await run(paper().replace('**Recommended:', '**Certified:'));
  expect(code).toBe(1);
  expect(results).toEqual([
    expect.stringMatching(
      /^paper\.md: line \d+: \*\*Certified: .* stands here; it comes out as \*\*Recommended: /,
    ),
  ]);
  expect(remarks).toEqual([expect.stringMatching(/^One difference: /)]);
});

test('what is no export: 2, and the problem', async () => {
  const { code, results, remarks } = await run('# My notes\n');
  expect([code, results]).toEqual([2, []]);
  expect(remarks).toEqual([expect.stringMatching(/^paper\.md:0:0: the file carries no inputs/)]);
});
