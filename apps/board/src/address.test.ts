import { expect, test } from 'vitest';
import { placeOf } from './address.ts';

test('the home page and a board have their own addresses; the secret is in the fragment alone', () => {
  expect(placeOf({ pathname: '/', hash: '' })).toEqual({ kind: 'home' });
  expect(placeOf({ pathname: '/b/k3x', hash: '#s3cret' })).toEqual({ kind: 'board', board: 'k3x', secret: 's3cret' });
});

test.each(['/b/', '/b/a/b', '/x', '/b/%3Cscript%3E'])('%s leads nowhere', (pathname) => {
  expect(placeOf({ pathname, hash: '' })).toEqual({ kind: 'nowhere' });
});
