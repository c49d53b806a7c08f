import { expect, test } from 'vitest';
import { dispositionKinds } from './disposition-kinds.ts';

test('where somebody can be hurt, keeping it on purpose is not offered', () => {
  expect(dispositionKinds({ safety: true })).not.toContain('kept on purpose, because');
  expect(dispositionKinds({ safety: false })).toContain('kept on purpose, because');
});
