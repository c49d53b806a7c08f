import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { takeFolder } from './folder-lock.ts';

test('a directory of data is served by one process at a time', async () => {
  const directory = await mkdtemp(join(tmpdir(), 'loopwright-lock-'));
  const first = takeFolder(directory);
  expect(first).toBeDefined();
  expect(takeFolder(directory)).toBeUndefined();
  first?.release();
  const second = takeFolder(directory);
  expect(second).toBeDefined();
  second?.release();
  await rm(directory, { recursive: true });
});

test('a directory that is not there cannot be taken', () => {
  expect(() => takeFolder(join(tmpdir(), 'loopwright-nowhere', 'at-all'))).toThrow();
});
