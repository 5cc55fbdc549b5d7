import { expect, test } from 'vitest';
import { KEY, start } from './harness.ts';

test('begins with how to begin, and asks the first question', async () => {
  const terminal = start();
  await terminal.waitFor('Begin a new interview');
  expect(terminal.modes).toEqual({ alternate: true, cursor: false, paste: true });
  await terminal.press(KEY.enter);
  await terminal.waitFor('question 1');
  console.log(terminal.text());
});
