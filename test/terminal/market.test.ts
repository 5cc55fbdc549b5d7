import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, test } from 'vitest';
import { catalogImport } from '../../src/commands/catalog-import.ts';
import { marketWorkbook } from '../importing/market.ts';
import { folderWith } from '../temporary-folder.ts';
import { KEY, start, typedAhead } from './harness.ts';

const LONGEST = 480_000;
/** On a computer that does much else. */
const WAIT = 240_000;
let catalog = '';

beforeAll(async () => {
  const folder = folderWith({});
  writeFileSync(join(folder, 'market.xlsx'), marketWorkbook().bytes);
  const silent = { result: () => undefined, remark: () => undefined };
  await catalogImport('market.xlsx', { out: 'market' }, silent, folder);
  catalog = join(folder, 'market');
}, LONGEST);

test('399 machines and 297 rotaries: what to ask next waits for no decision, and no key waits for either', {
  timeout: LONGEST,
}, async () => {
  const terminal = start({ catalog, needed: true });
  await terminal.waitFor('399 machines', WAIT);
  terminal.send(
    typedAhead(['\r', '1\r', '1\r', 'Hinge\r', '1\r', '200 x 150 x 80\r', '1 2 \r', KEY.enter].join('')),
  );
  await terminal.waitFor('Ceiling', WAIT);
  // a decision on all of it is under way by now
  terminal.send(typedAhead(['4200\r', '3000\r', '3000\r'].join('')));
  await terminal.waitFor(/Asked now because it may drop any of the \d+ that may win,/, WAIT);
  terminal.send(KEY.ctrlN);
  await terminal.waitFor(/10 answered, about(?![\s\S]*How much floor)/, WAIT);
  terminal.send(KEY.escape);
  await terminal.waitFor('How much floor is there for the machine?', WAIT);
});
