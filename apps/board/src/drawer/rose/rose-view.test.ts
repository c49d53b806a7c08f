import { expect, test } from 'vitest';
import { toPetals } from './rose-view.ts';

const ROSE = [400, 100, 0, 0, 0, 0, 0, 0].map((length, index) => ({ holes: index < 2 ? 1 : 0, length }));

test('the longest direction reaches the rim, north up', () => {
  const [north] = toPetals(ROSE, 'metres');
  expect(north?.said).toBe('north: 1 hole, 400 m');
  expect(north?.labelAt).toEqual({ x: 0, y: -1.18 });
  // sin and cos of 19° by table: 0.326, 0.946.
  expect(north?.path).toBe('M0 0L-0.326 -0.946A1 1 0 0 1 0.326 -0.946Z');
});

test('a quarter of the play gets half the radius, so a quarter of the area', () => {
  expect(toPetals(ROSE, 'metres')[1]?.path).toContain('A0.5 0.5');
});

test('a direction nobody plays has no petal', () => {
  expect(toPetals(ROSE, 'metres')[4]).toMatchObject({ path: '', holes: '0', letters: 'S' });
});
