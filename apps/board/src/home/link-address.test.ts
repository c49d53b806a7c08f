import { expect, test } from 'vitest';
import { readLink } from './link-address.ts';

const HERE = 'http://boards.example:8080';

test.each(['http://boards.example:8080/b/k3x9#s3cret', '  /b/k3x9#s3cret '])('%j opens', (pasted) => {
  expect(readLink(pasted, HERE)).toEqual({ kind: 'link', link: `${HERE}/b/k3x9#s3cret` });
});

test.each([
  ['', /not the link/],
  ['hello', /not the link/],
  ['http://boards.example:8080/', /not the link/],
  ['javascript:alert(1)', /not the link/],
  ['http://boards.example:8080/b/k3x9', /secret/],
  ['https://elsewhere.example/b/k3x9#s', /elsewhere\.example/],
])('%j is answered with what to do', (pasted, why) => {
  expect(readLink(pasted, HERE)).toMatchObject({ kind: 'not-a-link', why: expect.stringMatching(why) });
});
