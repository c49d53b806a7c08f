import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { NamedEdit } from './named-edit.ts';
import { parseNamedEdit } from './parse-named-edit.ts';

const of = { routing: 'a', hole: 'h1' } as const;
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
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(fields, (value) => {
      expect(['undefined', 'object']).toContain(typeof parseNamedEdit(value));
    }),
  );
});
