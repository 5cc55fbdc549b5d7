// Run by watched.test.ts: the third case never returns.
import { setTimeout as pause } from 'node:timers/promises';
import { watched } from './watched.ts';

const { begin } = await watched('spoiled input', 1);
for (let number = 1; ; number += 1) {
  begin(number);
  await pause(20);
  while (number === 3);
}
