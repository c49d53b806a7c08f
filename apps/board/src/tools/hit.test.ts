import { expect, test } from 'vitest';
import type { FindingView } from '../drawing/finding-view.ts';
import type { HoleView } from '../drawing/hole-view.ts';
import { hitAt, REACH, type Targets } from './hit.ts';

/** A straight hole of 400 m going north from (x, 0), with a turn point half way and a forward tee 60 m up. */
function holeAt(id: string, x: number): HoleView {
  const line = [
    { x, y: 0 },
    { x, y: 200 },
    { x, y: 400 },
  ];
  return {
    id,
    label: id,
    spare: false,
    centreline: line,
    line: [],
    corridor: [],
    tees: [
      { part: 'tee:back', teeSet: 'back', at: { x, y: 0 }, turn: 0, proposed: false },
      { part: 'tee:forward', teeSet: 'forward', at: { x, y: 60 }, turn: 0, proposed: false },
    ],
    turns: [{ part: 'turn:t1', at: { x, y: 200 } }],
    green: { at: { x, y: 400 }, outline: [], reach: 15 },
    numberPlaces: [{ x, y: 130 }],
    pinned: [],
    fans: [],
  };
}

const finding: FindingView = { key: 'f', severity: 'stop', at: { x: 0, y: 300 }, holes: ['one'] };
const targets: Targets = {
  holes: [holeAt('one', 0), holeAt('two', 100)],
  numbers: new Map([
    ['one', { x: 0, y: 130 }],
    ['two', { x: 100, y: 130 }],
  ]),
  walks: [
    {
      key: 'one>two',
      line: [],
      path: [
        { x: 0, y: 420 },
        { x: 100, y: 0 },
      ],
      end: { x: 100, y: 0 },
      holes: [],
    },
  ],
  findings: [finding],
  findingPlaces: new Map([['f', { x: 20, y: 300 }]]),
  teeSet: 'back',
  selected: undefined,
};
const reach = REACH.mouse;

test('what can be hit is at least 24 pixels across, and more for a finger', () => {
  expect(REACH.mouse * 2).toBeGreaterThanOrEqual(24);
  expect(REACH.touch).toBeGreaterThan(REACH.mouse);
});

test.each([
  ['a tee', { x: 3, y: -4 }, { kind: 'part', hole: 'one', part: 'tee:back', at: { x: 0, y: 0 } }],
  ['a turn point', { x: 4, y: 203 }, { kind: 'part', hole: 'one', part: 'turn:t1', at: { x: 0, y: 200 } }],
  ['a green, anywhere on it', { x: -13, y: 405 }, { kind: 'part', hole: 'one', part: 'green', at: { x: 0, y: 400 } }],
  ['a number', { x: 98, y: 133 }, { kind: 'number', hole: 'two' }],
  ['a finding where its sign stands', { x: 22, y: 301 }, { kind: 'finding', finding: 'f' }],
  ['a centreline', { x: 4, y: 330 }, { kind: 'centreline', hole: 'one' }],
  ['a walk', { x: 50, y: 210 }, { kind: 'walk', walk: 'one>two' }],
])('%s is hit', (_name, at, hit) => {
  expect(hitAt(targets, at, reach)).toEqual(hit);
});

test('bare ground is nothing', () => {
  expect(hitAt(targets, { x: 300, y: 300 }, reach)).toBeUndefined();
});

test('a tee of another set is left alone until its hole is picked out', () => {
  const at = { x: 9, y: 60 };
  expect(hitAt(targets, at, reach)).toBeUndefined();
  expect(hitAt({ ...targets, selected: 'one' }, at, reach)).toMatchObject({ kind: 'part', part: 'tee:forward' });
});

test('parts of the hole picked out come before a number that is nearer', () => {
  const near = { ...targets, numbers: new Map([['two', { x: 0, y: 190 }]]) };
  const at = { x: 0, y: 193 };
  expect(hitAt(near, at, reach)).toEqual({ kind: 'number', hole: 'two' });
  expect(hitAt({ ...near, selected: 'one' }, at, reach)).toMatchObject({ kind: 'part', part: 'turn:t1' });
});
