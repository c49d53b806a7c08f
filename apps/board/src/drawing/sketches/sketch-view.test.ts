import type { Sketch } from '@loopwright/model';
import { expect, test } from 'vitest';
import { ANALYSIS, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { ringCentre } from './ring-centre.ts';
import { toSketchView } from './sketch-view.ts';
import { openSketchViews } from './sketch-views.ts';

const at = (x: number, y: number) => ({ x, y });
const sketch = (shape: Sketch['shape']): Sketch => ({ id: 'k1', shape, by: 'Jo Oram', ink: 1, kept: false });
const ground = { routing: ROUTING, analysis: ANALYSIS, units: 'metres' } as const;

test('a ring about a green follows it; about a part that is not on this drawing it is not drawn', () => {
  const about = { routing: 'a', hole: 'h1', part: 'green' } as const;
  expect(ringCentre(about, ROUTING, ANALYSIS)).toEqual(at(0, 365.76));
  expect(ringCentre({ ...about, part: 'tee:back' }, ROUTING, ANALYSIS)).toEqual(at(0, 0));
  expect(ringCentre({ ...about, routing: 'b' }, ROUTING, ANALYSIS)).toBeUndefined();
  expect(ringCentre({ ...about, hole: 's1' }, ROUTING, ANALYSIS)).toBeUndefined();
  expect(ringCentre({ ...about, part: 'turn:gone' }, ROUTING, ANALYSIS)).toBeUndefined();
  const moved = openSketchViews();
  const ring = [sketch({ kind: 'ring', radius: 30, about })];
  const before = moved(ring, ground);
  const further = ROUTING.holes.map((hole) =>
    hole.id === 'h1' && hole.green ? { ...hole, green: { ...hole.green, centre: at(9, 365.76) } } : hole,
  );
  const [after] = moved(ring, { ...ground, routing: { ...ROUTING, holes: further } });
  expect(before[0]?.ring).toEqual({ at: at(0, 365.76), radius: 30 });
  expect(after?.ring?.at).toEqual(at(9, 365.76));
});

test('what stays as it was keeps its view, until it is read in another unit', () => {
  const views = openSketchViews();
  const drawn = [sketch({ kind: 'measured line', points: [at(0, 0), at(0, 91.44)] })];
  const first = views(drawn, ground);
  expect(views(drawn, { ...ground, analysis: { ...ANALYSIS } })).toBe(first);
  expect(first[0]?.words.map(({ text }) => text)).toEqual(['91 m']);
  expect(views(drawn, { ...ground, units: 'yards' })[0]?.words.map(({ text }) => text)).toEqual(['100 yd']);
});

test('every leg has its length at its middle, and the sum stands at the end', () => {
  const view = toSketchView(sketch({ kind: 'rod', points: [at(0, 0), at(0, 265), at(140, 265)] }), 'metres', undefined);
  expect(view?.words.map(({ at, text }) => ({ at, text }))).toEqual([
    { at: at(0, 132.5), text: '265 m' },
    { at: at(70, 265), text: '140 m' },
    { at: at(140, 265), text: '265 + 140 = 405 m' },
  ]);
  expect(view?.by.initials).toBe('JO');
});

test('an area says what lies in it at its middle', () => {
  const ring = [at(0, 0), at(100, 0), at(100, 50), at(0, 50)];
  const view = toSketchView(sketch({ kind: 'measured area', ring }), 'metres', undefined);
  expect(view?.words).toEqual([{ at: at(50, 25), text: '5,000 m²', room: 2 * Math.sqrt(5000) }]);
});
