import { expect, test } from 'vitest';
import { routingTitle } from './routing-title.ts';

test.each([
  ['B', 'Routing B'],
  ['B, drumlin first', 'B, drumlin first'],
  ['Existing', 'Existing'],
])('a routing named %s is shown as %s', (name, title) => {
  expect(routingTitle({ name })).toBe(title);
});
