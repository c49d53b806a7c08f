import { expect, test } from 'vitest';
import { type DrawnHole, figuresOf, isLastPoint, partsOf, refusalOf } from './drawn-hole.ts';

const at = (x: number, y: number) => ({ x, y });
const metres = (length: number) => `${Math.round(length)} m`;
const drawn = (first: DrawnHole['first'], ...points: DrawnHole['points']): DrawnHole => ({
  hole: 'h1',
  first,
  points,
  turns: ['t1', 't2', 't3'],
});

test('drawn from the tee: its turn and its green in the order of play, the green along the last leg', () => {
  const parts = partsOf(drawn('tee', at(0, 0), at(0, 240)), at(120, 240));
  expect(parts.line).toEqual([at(0, 0), at(0, 240), at(120, 240)]);
  expect(parts.tee).toEqual(at(0, 0));
  expect(parts.turnPoints).toEqual([{ id: 't1', at: at(0, 240) }]);
  // East is a quarter turn from north.
  expect(parts.green).toMatchObject({ centre: at(120, 240), bearing: 1.570796 });
});

test('drawn back from the green it is the same hole', () => {
  const forward = partsOf(drawn('tee', at(0, 0), at(0, 240), at(60, 400)), at(60, 540));
  const back = partsOf(drawn('green', at(60, 540), at(60, 400), at(0, 240)), at(0, 0));
  expect(back.line).toEqual(forward.line);
  expect(back.green).toEqual(forward.green);
  expect(back.tee).toEqual(forward.tee);
});

test('with its first point alone it lacks its other end', () => {
  expect(partsOf(drawn('tee', at(5, 5)), undefined)).toEqual({ line: [at(5, 5)], turnPoints: [], tee: at(5, 5) });
  expect(partsOf(drawn('green', at(5, 5)), undefined).tee).toBeUndefined();
});

// Length by Pythagoras: 180 + √(90² + 120²) = 180 + 150 = 330 m. Par by the R&A/USGA table (Rules of Handicapping,
// Appendix F, men): 4 from 220 to 450 m.
test('length and par run along the line', () => {
  const line = [at(0, 0), at(0, 180), at(90, 300)];
  expect(figuresOf(line, { id: 'b', name: 'Back', player: 'scratch man' })).toEqual({ length: 330, par: 4 });
});

test('a hole has three turns and no more', () => {
  expect(isLastPoint(drawn('tee', at(0, 0), at(0, 100), at(0, 200)))).toBe(false);
  expect(isLastPoint(drawn('tee', at(0, 0), at(0, 100), at(0, 200), at(0, 300)))).toBe(true);
});

test('no length, three kilometres, and back past the tee are refused in words', () => {
  const from = drawn('tee', at(0, 0), at(0, 240));
  expect(refusalOf(from, at(0, 240), metres)).toBe('Too near: a leg has at least 10 m.');
  expect(refusalOf(from, at(0, 3000), metres)).toBe('3000 m is longer than any hole: choose a nearer place.');
  expect(refusalOf(from, at(0, -100), metres)).toBe('The line would go back on itself: choose a place further on.');
  expect(refusalOf(from, at(120, 300), metres)).toBeUndefined();
  expect(refusalOf(drawn('tee'), at(0, 0), metres)).toBeUndefined();
});
