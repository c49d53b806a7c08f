import type { SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { Selection } from '../../board/parts.ts';
import type { Hit } from '../hit.ts';
import { at, openHand } from '../one-hole.test-hand.ts';
import { takeOutAt } from '../take-out-at.ts';
import type { Gesture } from '../tool.ts';
import { beginGesture } from '../tools.ts';
import { LAND, square } from './land.test-site.ts';
import { nextVertex, nudgeThing, takenAway } from './nudge-thing.ts';

const place = (x: number, y: number): SitePoint => ({ x, y });
const POND = { of: 'feature', feature: 'pond', ring: 0 } as const;
const PICKED: Selection = { thing: { kind: 'feature', id: 'pond' } };
const vertex: Hit = { kind: 'vertex', outline: POND, at: place(200, 200) };
const onLand = (selection: Selection = {}, locked = false) => openHand({ locked }, selection, LAND);

function drag(gesture: Gesture | undefined, ...ways: readonly (readonly [number, number])[]) {
  for (const [x, y] of ways) gesture?.move(at(x, y));
  const last = ways.at(-1);
  if (last) gesture?.end(at(...last));
}

test('a mark, a base with its footprints and a landmark go along with the hand, on a locked routing too', () => {
  const { hand, did } = onLand({}, true);
  const sign = (thing: NonNullable<Selection['thing']>, x: number, y: number): Hit => ({
    kind: 'thing',
    thing,
    at: place(x, y),
    by: 'sign',
  });
  drag(beginGesture(sign({ kind: 'mark', id: 'm1' }, 700, 100), at(702, 100), hand), [712, 130]);
  expect(did).toEqual([
    { thing: { kind: 'mark', id: 'm1' } },
    { edit: 'change mark', mark: 'm1', to: { at: place(710, 130) } },
    'drop',
  ]);
  did.length = 0;
  drag(beginGesture(sign({ kind: 'base', id: 'house' }, 500, 500), at(500, 500), hand), [510, 500]);
  expect(did[1]).toEqual({
    edit: 'change base',
    base: 'house',
    to: { apron: place(510, 500), footprints: [square(500, 520, 20)] },
  });
  did.length = 0;
  drag(beginGesture(sign({ kind: 'feature', id: 'oak' }, 600, 600), at(600, 600), hand), [600, 640]);
  expect(did[1]).toMatchObject({ edit: 'move outline', outline: { feature: 'oak' }, by: place(0, 40) });
});

test('a press inside an area picks it out; a drag there moves the paper and not the area', () => {
  const inside: Hit = { kind: 'thing', thing: { kind: 'feature', id: 'wood' }, at: place(450, 450), by: 'inside' };
  const pressed = onLand();
  beginGesture(inside, at(450, 450), pressed.hand)?.end(at(450, 450));
  expect(pressed.did).toEqual([{ thing: { kind: 'feature', id: 'wood' } }]);
  const dragged = onLand();
  drag(beginGesture(inside, at(450, 450), dragged.hand), [480, 450]);
  expect(dragged.did).toEqual([{ pan: { x: 30, y: 0 } }]);
});

test('a vertex is dragged, shown live, written once and stays picked out', () => {
  const { hand, did } = onLand(PICKED);
  drag(beginGesture(vertex, at(200, 200), hand), [190, 195], [180, 190]);
  expect(did).toEqual([
    { edit: 'move vertex', outline: POND, from: place(200, 200), to: place(190, 195) },
    { edit: 'move vertex', outline: POND, from: place(200, 200), to: place(180, 190) },
    'drop',
    { ...PICKED, vertex: { outline: POND, at: place(180, 190) } },
  ]);
});

test('a vertex that would make the outline cross itself is put back with a word', () => {
  const { hand, did } = onLand(PICKED);
  drag(beginGesture(vertex, at(200, 200), hand), [400, 250]);
  expect(did.slice(1)).toEqual(['let go', { said: expect.stringMatching(/cross or touch itself/) }]);
});

test('the middle of an edge becomes a vertex', () => {
  const edge: Hit = { kind: 'edge', outline: POND, after: place(200, 200), at: place(250, 200) };
  const { hand, did } = onLand(PICKED);
  drag(beginGesture(edge, at(250, 200), hand), [250, 180]);
  expect(did[0]).toEqual({ edit: 'add vertex', outline: POND, after: place(200, 200), at: place(250, 180) });
});

test('a press with Alt, a double press and Delete take a vertex out', () => {
  const wrote = { wrote: { edit: 'remove vertex', outline: POND, at: place(200, 200) } };
  const alt = onLand(PICKED);
  beginGesture(vertex, at(200, 200, { alt: true }), alt.hand)?.end(at(200, 200, { alt: true }));
  expect(alt.did).toEqual([wrote]);
  const twice = onLand(PICKED);
  takeOutAt(vertex, twice.hand);
  expect(twice.did).toEqual([wrote]);
  const picked = { ...PICKED, vertex: { outline: POND, at: place(200, 200) } };
  expect(takenAway(LAND, picked)).toMatchObject({ kind: 'edit', edit: wrote.wrote, select: PICKED });
  expect(takenAway(LAND, PICKED)).toMatchObject({ edit: { edit: 'remove features', features: ['pond'] }, select: {} });
});

test('an outline keeps its third corner, a line its second point', () => {
  const road = { of: 'feature', feature: 'road', ring: 0 } as const;
  const { hand, did } = onLand({ thing: { kind: 'feature', id: 'road' } });
  takeOutAt({ kind: 'vertex', outline: road, at: place(0, 700) }, hand);
  expect(did).toEqual([{ said: 'A line keeps two points.' }]);
});

test('the boundary moves whole, with the land inside it', () => {
  const whole: Hit = { kind: 'whole', outline: { of: 'boundary', part: 'outlines', ring: 0 }, at: place(500, 1020) };
  const { hand, did } = onLand({ thing: { kind: 'boundary' } });
  drag(beginGesture(whole, at(500, 1020), hand), [510, 1020]);
  expect(did[0]).toEqual({
    edit: 'draw boundary',
    boundary: { outlines: [square(10, 0, 1000)], inner: [square(810, 800, 100)], tolerance: 0 },
  });
});

test('arrow keys move the vertex picked out, else the whole thing; a thing that is gone has neither', () => {
  const picked = { ...PICKED, vertex: { outline: POND, at: place(200, 200) } };
  expect(nudgeThing(LAND, picked)?.editFor(place(1, 0))).toMatchObject({ edit: 'move vertex', to: place(201, 200) });
  expect(nudgeThing(LAND, PICKED)?.editFor(place(0, 10))).toMatchObject({ edit: 'move outline', by: place(0, 10) });
  expect(nudgeThing(LAND, { thing: { kind: 'feature', id: 'gone' } })).toBeUndefined();
});

test('vertices are picked out one after the other, of what is cut out too, then the whole thing', () => {
  const thing = { kind: 'feature', id: 'pond' } as const;
  const first = nextVertex(LAND, thing, undefined);
  expect(first?.at).toEqual(place(200, 200));
  expect(nextVertex(LAND, thing, first)?.at).toEqual(place(300, 200));
  const inner = { of: 'feature', feature: 'pond', ring: 1 } as const;
  expect(nextVertex(LAND, thing, { outline: POND, at: place(200, 300) })).toEqual({
    outline: inner,
    at: place(240, 240),
  });
  expect(nextVertex(LAND, thing, { outline: inner, at: place(240, 260) })).toBeUndefined();
});
