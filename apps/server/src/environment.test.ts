import { expect, test } from 'vitest';
import { readEnvironment } from './environment.ts';

test('without anything said the server listens everywhere at 8480 and keeps its data beside it', () => {
  const read = readEnvironment({});
  expect(read).toMatchObject({ kind: 'environment', environment: { port: 8480, host: '0.0.0.0' } });
  if (read.kind === 'environment') expect(read.environment.dataDirectory).toMatch(/data$/);
});

test.each([
  [{ PORT: 'eighty' }, 'PORT'],
  [{ PORT: '99999' }, 'PORT'],
  [{ PUBLIC_URL: 'boards' }, 'PUBLIC_URL'],
  [{ PUBLIC_URL: 'ftp://boards.example' }, 'PUBLIC_URL'],
])('%j is refused in one sentence that names it', (variables, name) => {
  const read = readEnvironment(variables);
  expect(read.kind).toBe('unusable');
  if (read.kind === 'unusable') expect(read.why).toMatch(new RegExp(`^${name} .*\\.$`));
});

test('the public address loses its last slash', () => {
  expect(readEnvironment({ PUBLIC_URL: 'https://boards.example/' })).toMatchObject({
    environment: { publicUrl: 'https://boards.example' },
  });
});
