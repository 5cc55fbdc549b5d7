// The least that Ink can paint and that takes keys: what our first frame is compared with.
import { render, Text, useInput } from 'ink';
import { createElement } from 'react';

function Hello() {
  useInput(() => {});
  return createElement(Text, null, 'Hello, world');
}

render(createElement(Hello));
