import { readFileSync } from 'node:fs';
import { holeOf } from '@loopwright/model';
import { expect, test } from 'vitest';
import { openPlan } from './plan-document.ts';

const stored = (name: string): Uint8Array => {
  const file: unknown = JSON.parse(readFileSync(new URL(`./fixtures/${name}.json`, import.meta.url), 'utf8'));
  if (typeof file !== 'object' || file === null || !('base64' in file) || !Array.isArray(file.base64))
    throw new Error('not a fixture');
  return Uint8Array.from(Buffer.from(file.base64.join(''), 'base64'));
};

test('a board stored by version 1 reads as it was left, with nothing unread', () => {
  const plan = openPlan(stored('board-of-version-1'));
  expect(plan.unread()).toEqual([]);
  const { site, routings, dispositions, teeSets } = plan.read();
  const [routing] = routings;
  if (!routing) throw new Error('the routing is gone');
  expect(site).toMatchObject({
    name: 'Invented site',
    bases: [{ id: 'house' }],
    features: [{ id: 'pond', buffer: 5 }],
  });
  expect(Object.keys(site).sort()).toEqual(['bases', 'features', 'images', 'marks', 'name', 'north']);
  expect(teeSets.map(({ id }) => id)).toEqual(['back', 'forward']);
  expect(routing.loops).toEqual([{ id: 'out', name: 'Out', base: 'house', holes: ['h4', 'h1', 'h2'] }]);
  expect(routing.spare).toEqual(['h3']);
  expect(holeOf(routing, 'h1')).toMatchObject({
    green: { centre: { x: 130.5, y: 410.25 }, length: 30, width: 24, bearing: 0.5 },
    verdict: 'keeper',
    verdictReason: 'the best green site',
    par: { men: 'by length', women: 5 },
    pinned: ['green'],
    relations: [{ kind: 'shares its green with', hole: 'h2' }],
  });
  expect(holeOf(routing, 'h1')?.name).toBeUndefined(); // given and taken back
  expect(holeOf(routing, 'h2')).toMatchObject({
    green: { centre: { x: 300, y: 0 } },
    tees: { back: { x: 420, y: 400 } },
    turnPoints: [{ id: 't2' }, { id: 't1' }],
  });
  expect(dispositions).toEqual([
    { routing: 'a', finding: 'long-walk|h1|h2', kind: 'to be checked by', words: 'the surveyor', measured: 310 },
  ]);
});

test('a board set up at the drawing table reads as it was left, with nothing unread', () => {
  const plan = openPlan(stored('board-from-the-drawing-table'));
  expect(plan.unread()).toEqual([]);
  const { site, teeSets, routings } = plan.read();
  expect(site).toMatchObject({
    ...{ name: 'Made-up Moor', note: 'Invented.', units: 'yards', north: 0.02 },
    grid: { easting: 412_000, northing: 98_000 },
    boundary: { tolerance: 2, outlines: [[{}, {}, { x: 1250.5, y: 700 }, {}]] },
    bases: [{ id: 'half', note: 'hut' }],
    marks: [{ id: 'm1', kind: 'green site', verdict: 'natural', note: 'bowl' }],
    images: [{ id: 'i1', widthPixels: 200, placement: [1, 0, 0, 0, -1, 100], name: 'plan.png', scaledBy: 'guess' }],
  });
  expect(site.features).toMatchObject([
    {
      id: 'pond',
      name: 'Mill pond',
      authority: 'the mill',
      buffer: 12,
      geometry: { rings: [[{}, { x: 70, y: 95 }, {}, {}]] },
    },
    { id: 'road', geometry: { type: 'line' } },
  ]);
  expect(site.sketches).toMatchObject([
    { id: 'k2', by: 'Ann', ink: 2, kept: true, note: 'the old hedge' },
    { id: 'k3', by: 'Bo', shape: { kind: 'ring', about: { hole: 'h1' } } },
  ]);
  expect(teeSets.map(({ id }) => id)).toEqual(['back', 'middle']);
  expect(routings[0]).toMatchObject({ loops: [{ id: 'out', holes: ['h1'] }], spare: ['h4', 'h2', 'h3'] });
  expect(routings[0]?.loops[0]).not.toHaveProperty('base');
});
