import type { SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { SiteThing } from '../../board/parts.ts';
import { type Hit, hitAt, type Targets } from '../hit.ts';
import { openLandTargets } from './hit-site.ts';
import { LAND } from './land.test-site.ts';
import { landGrips } from './land-grips.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });

function hits(chosen?: SiteThing, over: Partial<Targets> = {}) {
  const land = openLandTargets()({ site: LAND, grips: landGrips(LAND, chosen, 1), chosen });
  const targets: Targets = {
    holes: [],
    numbers: new Map(),
    walks: [],
    findings: [],
    findingPlaces: new Map(),
    teeSet: 'back',
    selected: undefined,
    land,
    ...over,
  };
  return (x: number, y: number) => hitAt(targets, at(x, y), 12);
}
const thing = (hit: Hit | undefined) => (hit?.kind === 'thing' ? [hit.thing, hit.by] : hit?.kind);

test.each([
  ['the nearer of two marks', 708, 104, [{ kind: 'mark', id: 'm1' }, 'sign']],
  ['a base by its house', 505, 495, [{ kind: 'base', id: 'house' }, 'sign']],
  ['a base inside its footprint', 500, 530, [{ kind: 'base', id: 'house' }, 'inside']],
  ['a landmark', 606, 606, [{ kind: 'feature', id: 'oak' }, 'sign']],
  ['a road on its line', 300, 704, [{ kind: 'feature', id: 'road' }, 'line']],
  ['the boundary on its line', 400, 3, [{ kind: 'boundary' }, 'line']],
  ["someone else's land inside on its line", 850, 797, [{ kind: 'boundary' }, 'line']],
  ['a wood inside', 450, 450, [{ kind: 'feature', id: 'wood' }, 'inside']],
  ['a pond in the wood, the smaller of the two', 220, 220, [{ kind: 'feature', id: 'pond' }, 'inside']],
  ['the wood on the island, which is cut out of the pond', 250, 250, [{ kind: 'feature', id: 'wood' }, 'inside']],
  ['nothing on bare land', 600, 300, undefined],
  ['nothing well inside the boundary: it is hit on its line alone', 900, 300, undefined],
] as const)('the hand meets %s', (_, x, y, expected) => {
  expect(thing(hits()(x, y))).toEqual(expected);
});

test('where an area is picked out already, a press inside means the next larger one, and then nothing', () => {
  expect(thing(hits({ kind: 'feature', id: 'pond' })(215, 212))).toEqual([{ kind: 'feature', id: 'wood' }, 'inside']);
  expect(thing(hits({ kind: 'feature', id: 'wood' })(450, 380))).toBeUndefined();
});

test('holes come before the land: a number over a wood is the hole', () => {
  const numbers = new Map([['h1', at(450, 450)]]);
  expect(hits(undefined, { numbers })(452, 452)).toEqual({ kind: 'number', hole: 'h1' });
});

test('the vertices of the thing picked out come first, then the middles of its edges', () => {
  const hit = hits({ kind: 'feature', id: 'pond' }, { numbers: new Map([['h1', at(205, 205)]]) });
  const outline = { of: 'feature', feature: 'pond', ring: 0 } as const;
  expect(hit(203, 203)).toEqual({ kind: 'vertex', outline, at: at(200, 200) });
  expect(hit(250, 204)).toEqual({ kind: 'edge', outline, after: at(200, 200), at: at(250, 200) });
  expect(hit(199, 252)).toEqual({ kind: 'edge', outline, after: at(200, 300), at: at(200, 250) });
});

test('from far off, vertices that would lie on each other are left to a nearer look', () => {
  const chosen = { kind: 'feature', id: 'pond' } as const;
  const vertices = (scale: number) => landGrips(LAND, chosen, scale).filter(({ kind }) => kind === 'vertex').length;
  expect(vertices(2)).toBe(8);
  expect(vertices(1)).toBe(4); // the island is 20 pixels across
  expect(vertices(0.1)).toBeLessThan(4);
});

test('of two thousand features the one under the hand is found without trying each', () => {
  const wood = LAND.features[0];
  if (!wood) throw new Error('the land has a wood');
  const features = Array.from({ length: 2000 }, (_, index) => ({
    ...wood,
    id: `f${index}`,
    geometry: { type: 'area' as const, rings: [[at(index * 10, 0), at(index * 10 + 8, 0), at(index * 10 + 4, 8)]] },
  }));
  const land = openLandTargets()({ site: { ...LAND, features }, grips: [], chosen: undefined });
  expect(land.inside(at(15_004, 3))?.thing).toEqual({ kind: 'feature', id: 'f1500' });
});

test('an outline that is hardly seen has no vertices, and the grips of a base leave its sign to be taken hold of', () => {
  expect(landGrips(LAND, { kind: 'feature', id: 'pond' }, 0.2)).toEqual([]);
  const base = { kind: 'base', id: 'house' } as const;
  expect(landGrips(LAND, base, 1).map(({ kind }) => kind)).toEqual(['whole']); // 20 m square, 20 pixels
  const near = landGrips(LAND, base, 4);
  expect(near.some(({ kind }) => kind === 'whole')).toBe(true);
  const apron = LAND.bases[0]?.apron ?? at(0, 0);
  for (const grip of near) expect(Math.hypot(grip.at.x - apron.x, grip.at.y - apron.y) * 4).toBeGreaterThanOrEqual(22);
});
