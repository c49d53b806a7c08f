import { expect, test } from 'vitest';
import { broughtIntoView, fitted, MOST_SCALE, panned, toCanvas, toSite, zoomed } from './site-transform.ts';

const size = { width: 800, height: 600 };
const view = { scale: 0.5, x: 100, y: 500 };

test('north is up: a place further north is drawn higher', () => {
  expect(toCanvas(view, { x: 0, y: 100 }).y).toBeLessThan(toCanvas(view, { x: 0, y: 0 }).y);
  expect(toCanvas(view, { x: 100, y: 0 })).toEqual({ x: 150, y: 500 });
});

test('a place on the canvas leads back to the place on the site', () => {
  const at = { x: 123.456, y: -78.9 };
  const back = toSite(view, toCanvas(view, at));
  expect(back.x).toBeCloseTo(at.x, 9);
  expect(back.y).toBeCloseTo(at.y, 9);
});

test('zooming keeps the ground under the pointer where it is', () => {
  const pointer = { x: 333, y: 222 };
  const before = toSite(view, pointer);
  const after = toSite(zoomed(view, 1.7, pointer), pointer);
  expect(after.x).toBeCloseTo(before.x, 9);
  expect(after.y).toBeCloseTo(before.y, 9);
});

test('zooming stops at the nearest look, and the ground still stays under the pointer', () => {
  const pointer = { x: 333, y: 222 };
  const near = zoomed(view, 1e6, pointer);
  expect(near.scale).toBe(MOST_SCALE);
  expect(toSite(near, pointer).x).toBeCloseTo(toSite(view, pointer).x, 9);
});

test('fitting shows every corner of the site inside the margin', () => {
  const bounds = { minX: -400, minY: 0, maxX: 1600, maxY: 700 };
  const fit = fitted(bounds, size, 40);
  for (const corner of [
    { x: -400, y: 0 },
    { x: 1600, y: 700 },
  ]) {
    const at = toCanvas(fit, corner);
    expect(at.x).toBeGreaterThanOrEqual(40 - 1e-9);
    expect(at.x).toBeLessThanOrEqual(760 + 1e-9);
    expect(at.y).toBeGreaterThanOrEqual(40 - 1e-9);
    expect(at.y).toBeLessThanOrEqual(560 + 1e-9);
  }
});

test('a single point can be fitted, at the nearest look', () => {
  const bounds = { minX: 5, minY: 5, maxX: 5, maxY: 5 };
  expect(toCanvas(fitted(bounds, size, 20), { x: 5, y: 5 })).toEqual({ x: 400, y: 300 });
});

test('a place already in sight does not move the drawing; one outside comes just inside', () => {
  expect(broughtIntoView(view, toSite(view, { x: 400, y: 300 }), size)).toBe(view);
  const far = { x: 5000, y: 0 };
  expect(toCanvas(broughtIntoView(view, far, size), far).x).toBeCloseTo(720, 9);
  expect(broughtIntoView(view, far, size).y).toBe(view.y);
});

test('panning moves everything by the same pixels', () => {
  expect(panned(view, { x: 10, y: -4 })).toEqual({ scale: 0.5, x: 110, y: 496 });
});
