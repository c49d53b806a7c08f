import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from '../canonical-json.ts';
import { orderKeyAt } from '../order-key.ts';
import { parsePlan } from './plan.ts';

const hole = (id: string, place: number, more: object = {}) => ({
  id,
  seat: { in: 'loop', loop: 'out', key: orderKeyAt(place) },
  tees: { back: { x: 0, y: place * 100 } },
  turnPoints: [],
  green: { centre: { x: 350, y: place * 100 }, length: 30, width: 24, bearing: 0 },
  par: { men: 4, women: 'by length' },
  verdict: 'undecided',
  pinned: [],
  waypoints: [],
  relations: [],
  ...more,
});

const board = (holes: readonly unknown[], more: object = {}) => ({
  loopwright: 1,
  site: { name: 'Made-up Moor', north: 0, bases: [], marks: [], features: [], images: [] },
  teeSets: [{ id: 'back', name: 'Back', player: 'scratch man' }],
  routings: [
    {
      id: 'a',
      name: 'A',
      locked: false,
      loops: [{ id: 'out', name: 'Out', holes: ['h1', 'h2'] }],
      rounds: [{ id: 'r', name: 'Round', loops: ['out'] }],
      holes,
      spare: [],
    },
  ],
  settings: {},
  dispositions: [],
  ...more,
});

function read(value: unknown) {
  const parsed = parsePlan(value);
  if (parsed.kind !== 'plan') throw new Error(parsed.why);
  return parsed;
}

test('a board comes back as it went in, without a note', () => {
  const input = board([hole('h1', 0), hole('h2', 1)]);
  const { plan, notes } = read(JSON.parse(JSON.stringify(input)));
  expect(notes).toEqual([]);
  expect(canonicalJson(plan)).toBe(canonicalJson(input));
});

test('the playing order follows from the seats, whatever the file lists', () => {
  const { plan } = read(
    board([hole('h1', 5), hole('h2', 1), hole('h3', 1), hole('h4', 0, { seat: { in: 'spare', key: 'a0' } })]),
  );
  expect(plan.routings[0]?.loops[0]?.holes).toEqual(['h2', 'h3', 'h1']);
  expect(plan.routings[0]?.spare).toEqual(['h4']);
});

test('two holes with one id are both kept, the later one with a number', () => {
  const { plan, notes } = read(board([hole('h1', 0), hole('h1', 1)]));
  expect(plan.routings[0]?.holes.map(({ id }) => id)).toEqual(['h1', 'h1-2']);
  expect(notes).toEqual(["Hole 'h1' is there twice; the later one is now 'h1-2'."]);
});

test('a bad part of a hole costs that part and is named', () => {
  const { plan, notes } = read(
    board([hole('h1', 0, { green: { centre: { x: null, y: 1 }, length: 30, width: 24, bearing: 0 }, colour: 'red' })]),
  );
  expect(plan.routings[0]?.holes[0]?.green).toBeUndefined();
  expect(notes).toEqual(["Hole 'h1': green, colour could not be read as written."]);
});

test('what points at something that is not there is put right and said', () => {
  const { plan, notes } = read(
    board([
      hole('h1', 0, { seat: { in: 'loop', loop: 'gone', key: 'a0' }, tees: { red: { x: 1, y: 1 } } }),
      hole('h2', 1, { relations: [{ kind: 'crosses on purpose', hole: 'h9' }] }),
    ]),
  );
  expect(plan.routings[0]?.spare).toEqual(['h1']);
  expect(notes).toHaveLength(3);
});

test.each([
  ['nothing', null, /no 'loopwright' version/],
  ['a list', [], /no 'loopwright' version/],
  ['another version', { loopwright: 2, routings: [] }, /version 2.*reload the page or update/],
  ['a version that is a script', { loopwright: '<b>', routings: [] }, /version <b>/],
  ['no routings', { loopwright: 1 }, /no routings/],
  ['rubbish routings', { loopwright: 1, routings: [1, 'a'] }, /No routing/],
])('%s is refused in one sentence', (_, value, why) => {
  const parsed = parsePlan(value);
  expect(parsed).toMatchObject({ kind: 'not-a-plan', why: expect.stringMatching(why) });
});

test('10,000 holes are refused in one sentence with what to do', () => {
  const parsed = parsePlan(board(Array.from({ length: 10_000 }, (_, index) => hole(`h${index}`, index % 60))));
  expect(parsed).toMatchObject({ kind: 'not-a-plan', why: expect.stringMatching(/10000 holes.*at most 200.*split/) });
});

test('no value makes the reader throw, and what it reads it reads again without a note', () => {
  const rubbish = fc.anything({ maxDepth: 3 });
  fc.assert(
    fc.property(rubbish, rubbish, rubbish, fc.array(rubbish, { maxLength: 4 }), (site, teeSets, settings, holes) => {
      const { plan } = read(board([hole('h1', 0), ...holes], { site, teeSets, settings, dispositions: holes }));
      const again = read(JSON.parse(JSON.stringify(plan)));
      expect(again.plan).toEqual(plan);
      expect(again.notes).toEqual([]);
    }),
    { numRuns: 300 },
  );
});
