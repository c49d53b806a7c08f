import { expect, test } from 'vitest';
import { LAND } from '../../../tools/land/land.test-site.ts';
import { ownArea, sizeWords } from './boundary-view.ts';

// By hand: 1,000 m square is 100 ha and 4,000 m around; 100 m square of it, 1 ha, is someone else's.
test('the size of a site leaves out what is someone else’s', () => {
  const { boundary } = LAND;
  if (!boundary) throw new Error('the land has a boundary');
  expect(ownArea(boundary, 'metres')).toBe('99.00 ha');
  expect(sizeWords(boundary, 'metres')).toBe('99.00 ha, 4,000 m around; without 1.00 ha that is someone else’s.');
});
