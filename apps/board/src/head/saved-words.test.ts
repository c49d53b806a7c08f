import type { SavedState } from '@loopwright/document';
import { expect, test } from 'vitest';
import { savedWords } from './saved-words.ts';

const STATES: readonly [SavedState, string][] = [
  [{ kind: 'joining' }, 'joining the board'],
  [{ kind: 'saved' }, 'saved on the server'],
  [{ kind: 'saving', waiting: 1 }, 'saving 1 change'],
  [{ kind: 'saving', waiting: 2 }, 'saving 2 changes'],
  [{ kind: 'offline', kept: true, waiting: 3 }, 'offline: kept on this machine, 3 changes waiting'],
  [{ kind: 'offline', kept: true, waiting: 0 }, 'offline: everything here is kept on this machine'],
  [{ kind: 'offline', kept: false, waiting: 1 }, 'offline: 1 change in this page only, keep it open'],
  [{ kind: 'closed', code: 4410 }, 'closed: nothing more is saved'],
];

test.each(STATES)('%o reads %s', (state, words) => {
  expect(savedWords(state).words).toBe(words);
});

test('nothing but a committed state is said to be saved on the server', () => {
  for (const [state, words] of STATES) {
    if (state.kind !== 'saved') expect(words).not.toMatch(/saved on the server/);
  }
});
