import { expect, test } from 'vitest';
import { cookieName, heldTokens } from './cookies.ts';
import { isOwnOrigin } from './origin.ts';
import { rightsOf } from './rights.ts';

test.each([
  ['the page itself', { origin: 'http://localhost:8480', host: 'localhost:8480' }, true],
  ['a program without a browser', { host: 'localhost:8480' }, true],
  ['a page of another site', { origin: 'https://evil.example', host: 'localhost:8480' }, false],
  ['a page on another port', { origin: 'http://localhost:9000', host: 'localhost:8480' }, false],
  ['a page without an address', { origin: 'null', host: 'localhost:8480' }, false],
  ['a page behind our proxy', { origin: 'https://boards.example', host: '10.0.0.1:8480' }, true],
])('%s: own origin is %s', (_who, headers, own) => {
  expect(isOwnOrigin(headers, 'https://boards.example')).toBe(own);
});

test('cookies of other boards, and of other people, stay apart', () => {
  const cookies = {
    [cookieName('b1', 'm1')]: 't1',
    [cookieName('b1', 'm2')]: 't2',
    [cookieName('b2', 'm3')]: 't3',
    x: 'y',
  };
  expect(heldTokens('b1', cookies)).toEqual([
    { membership: 'm1', token: 't1' },
    { membership: 'm2', token: 't2' },
  ]);
  expect(heldTokens('b', cookies)).toEqual([]);
});

test('only designers write the plan, and nobody but the server writes the record', () => {
  expect(rightsOf('designer', 'plan')).toBe('write');
  expect(rightsOf('client', 'plan')).toBe('read');
  expect(rightsOf('viewer', 'plan')).toBe('read');
  expect(rightsOf('designer', 'record')).toBe('read');
});
