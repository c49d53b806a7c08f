import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { NamedEdit } from './named-edit.ts';
import { parseNamedEdit } from './parse-named-edit.ts';

const of = { routing: 'a', hole: 'h1' } as const;
const GREEN = { centre: { x: 0, y: 300 }, length: 30, width: 20, bearing: 0.25 };
const LOOP = { id: 'l1', name: 'Loop', base: 'house' };
const EDITS: readonly NamedEdit[] = [
  { edit: 'move part', ...of, part: 'tee:back', to: { x: 1.234, y: -5 } },
  { edit: 'move hole', ...of, by: { x: 1, y: 2 } },
  { edit: 'reverse hole', ...of },
  { edit: 'move in the round', ...of, loop: 'out', after: 'h2' },
  { edit: 'take out', ...of },
  { edit: 'bring back', ...of, loop: 'out', after: 'first' },
  { edit: 'swap places', ...of, with: 'h2' },
  { edit: 'set par', ...of, sex: 'women', par: 'by length' },
  { edit: 'judge', ...of, verdict: 'keeper', reason: 'the view' },
  { edit: 'pin', ...of, part: 'green' },
  { edit: 'unpin', ...of, part: 'turn:t1' },
  { edit: 'relate', ...of, relation: { kind: 'crosses on purpose', hole: 'h2' } },
  { edit: 'unrelate', ...of, relation: { kind: 'crosses on purpose', hole: 'h2' } },
  { edit: 'name hole', ...of, name: 'Quarry' },
  { edit: 'note hole', ...of, note: 'two\nlines' },
  { edit: 'draw hole', ...of, seat: 'spare', tees: {}, turnPoints: [], green: GREEN },
  {
    edit: 'draw hole',
    ...of,
    seat: { loop: 'out', after: 'first' },
    tees: { back: { x: 0, y: 0 } },
    turnPoints: [{ id: 't1', at: { x: 1, y: 2 } }],
  },
  { edit: 'copy hole', ...of, as: 'h9', by: { x: 40, y: 0 } },
  { edit: 'remove hole', ...of },
  { edit: 'move holes', routing: 'a', holes: ['h1', 'h2'], by: { x: 1, y: 2 } },
  { edit: 'add turn point', ...of, turn: 't9', at: { x: 1, y: 2 }, place: 1 },
  { edit: 'remove turn point', ...of, turn: 't1' },
  { edit: 'lengthen', ...of, end: 'tee:back', by: -12.5 },
  { edit: 'lengthen', ...of, end: 'green', by: 5 },
  { edit: 'shape green', ...of, shape: { length: 30, width: 20, bearing: 1 } },
  { edit: 'propose tee', ...of, teeSet: 'forward' },
  { edit: 'set waypoints', ...of, waypoints: [{ x: 1, y: 2 }] },
  { edit: 'set corridor', ...of, corridor: { tee: 20 } },
  { edit: 'set corridor', ...of, corridor: null },
  { edit: 'exchange corridors', ...of, with: 'h2' },
  { edit: 'start routing', routing: 'b', name: 'B', loops: [LOOP], rounds: [{ id: 'r', name: 'R', loops: ['l1'] }] },
  { edit: 'copy routing', routing: 'a', as: 'b', name: 'B' },
  { edit: 'name routing', routing: 'a', name: 'Old' },
  { edit: 'lock routing', routing: 'a' },
  { edit: 'unlock routing', routing: 'a' },
  { edit: 'remove routing', routing: 'a' },
  { edit: 'add loop', routing: 'a', loop: LOOP, after: 'first' },
  { edit: 'change loop', routing: 'a', loop: 'out', to: { name: 'In', base: null } },
  { edit: 'remove loop', routing: 'a', loop: 'out' },
  { edit: 'split loop', routing: 'a', loop: 'out', after: 'h1', as: LOOP },
  { edit: 'join loops', routing: 'a', loop: 'out', with: 'l1' },
  { edit: 'reverse loop', routing: 'a', loop: 'out' },
  { edit: 'copy loop', routing: 'a', loop: 'out', as: LOOP, holes: [{ hole: 'h1', as: 'c1' }], by: { x: 9, y: 0 } },
  { edit: 'add round', routing: 'a', round: { id: 'r', name: 'R', loops: ['out'] }, after: 'main' },
  { edit: 'change round', routing: 'a', round: 'r', to: { loops: ['out'] } },
  { edit: 'remove round', routing: 'a', round: 'r' },
  {
    edit: 'several',
    does: 'take out 2 holes',
    edits: [
      { edit: 'take out', ...of },
      { edit: 'take out', routing: 'a', hole: 'h2' },
    ],
  },
  { edit: 'change setting', setting: 'bend-angle', value: 'default' },
  {
    edit: 'decide',
    disposition: { routing: 'a', finding: 'long-walk|h1|h2', kind: 'mitigated by', words: 'trees', measured: 3 },
  },
  { edit: 'reopen', routing: 'a', finding: 'long-walk|h1|h2' },
];

test.each(EDITS)('$edit comes through as it was said', (edit) => {
  expect(parseNamedEdit(JSON.parse(JSON.stringify(edit)))).toEqual(edit);
});

test.each([
  { edit: 'move part', ...of, part: 'green', to: { x: Number.NaN, y: 0 } },
  { edit: 'move part', ...of, part: 'roof', to: { x: 0, y: 0 } },
  { edit: 'move part', routing: '__proto__', hole: 'h1', part: 'green', to: { x: 0, y: 0 } },
  { edit: 'move hole', ...of, by: { x: 1e308, y: 0 } },
  { edit: 'set par', ...of, sex: 'men', par: 9 },
  { edit: 'change setting', setting: 'toString', value: 1 },
  { edit: 'lay out plan', plan: {} },
  { edit: 'draw hole', ...of, seat: 'spare', tees: { back: { x: 'here', y: 0 } }, turnPoints: [] },
  { edit: 'draw hole', ...of, seat: 'spare', tees: {}, turnPoints: [], green: { ...GREEN, length: 1e9 } },
  {
    edit: 'draw hole',
    ...of,
    seat: 'spare',
    tees: {},
    turnPoints: ['a', 'b', 'c', 'd'].map((id) => ({ id, at: GREEN.centre })),
  },
  { edit: 'draw hole', ...of, seat: 'moon', tees: {}, turnPoints: [] },
  {
    edit: 'draw hole',
    ...of,
    seat: 'spare',
    tees: Object.fromEntries('abcdefghi'.split('').map((id) => [id, GREEN.centre])),
    turnPoints: [],
  },
  { edit: 'lengthen', ...of, end: 'turn:t1', by: 4 },
  { edit: 'add turn point', ...of, turn: 't9', at: { x: 1, y: 2 }, place: 0.5 },
  { edit: 'set waypoints', ...of, waypoints: Array.from({ length: 21 }, (_, x) => ({ x, y: 0 })) },
  { edit: 'move holes', routing: 'a', holes: Array.from({ length: 201 }, (_, i) => `h${i}`), by: { x: 1, y: 1 } },
  { edit: 'several', does: 'x', edits: [{ edit: 'several', does: 'y', edits: [] }] },
  { edit: 'several', does: 'x', edits: Array.from({ length: 201 }, () => ({ edit: 'take out', ...of })) },
  { edit: 'several', does: 'x', edits: [{ edit: 'lay out plan', plan: {} }] },
  { edit: 'delete everything' },
  null,
  [],
])('%j is no edit', (value) => {
  expect(parseNamedEdit(value)).toBeUndefined();
});

test('any value is an edit or none, and never throws', () => {
  const fields = fc.record(
    {
      edit: fc.constantFrom(...EDITS.map(({ edit }) => edit)),
      routing: fc.constantFrom('a', '', 7),
      hole: fc.constantFrom('h1', null),
      part: fc.jsonValue(),
      to: fc.jsonValue(),
      by: fc.jsonValue(),
      relation: fc.jsonValue(),
      disposition: fc.jsonValue(),
      tees: fc.jsonValue(),
      turnPoints: fc.jsonValue(),
      seat: fc.jsonValue(),
      loop: fc.jsonValue(),
      loops: fc.jsonValue(),
      round: fc.jsonValue(),
      edits: fc.jsonValue(),
      as: fc.jsonValue(),
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(fields, (value) => {
      expect(['undefined', 'object']).toContain(typeof parseNamedEdit(value));
    }),
  );
});
