// A board goes through the shared document, out as a file and in again, and comes back as it was: every field of the
// site, whatever people put into it.
import { openPlan } from '@loopwright/document';
import { createPlanState } from '@loopwright/document/server';
import { readCourseFile, writeBoardFile } from '@loopwright/formats';
import { canonicalJson, FEATURE_KINDS, type Plan, parsePlan, type Site } from '@loopwright/model';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boardPlan } from './board-plan.ts';

const metres = fc.integer({ min: -2_000_000, max: 2_000_000 }).map((millimetres) => millimetres / 1000);
const point = fc.record({ x: metres, y: metres });
const points = fc.uniqueArray(point, { minLength: 3, maxLength: 8, selector: ({ x, y }) => `${x} ${y}` });
const word = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }).filter((text) => text.trim() !== '');
const id = fc.stringMatching(/^[a-z][a-z0-9-]{0,8}$/);
const things = <T>(arbitrary: fc.Arbitrary<T>) =>
  fc.array(fc.tuple(id, arbitrary), { maxLength: 4 }).map((list) => {
    return [...new Map(list)].map(([key, thing]) => ({ ...thing, id: key }));
  });
const maybe: { requiredKeys: never[] } = { requiredKeys: [] };

const geometry = fc.oneof(
  fc.record({ type: fc.constant('area' as const), rings: fc.array(points, { minLength: 1, maxLength: 3 }) }),
  fc.record({ type: fc.constant('line' as const), points }),
  fc.record({ type: fc.constant('point' as const), at: point }),
);
const shape = fc.oneof(
  fc.record({ kind: fc.constantFrom('stroke' as const, 'measured line' as const, 'rod' as const), points }),
  fc.record({ kind: fc.constant('measured area' as const), ring: points }),
  fc.record({
    kind: fc.constant('ring' as const),
    radius: fc.integer({ min: 1000, max: 90_000 }).map((radius) => radius / 1000),
    about: fc.oneof(
      fc.record({ at: point }),
      fc.record({ routing: fc.constant('a'), hole: id, part: fc.constant('green' as const) }),
    ),
  }),
);
const hash = fc.stringMatching(/^[0-9a-f]{64}$/);
const pixels = fc.integer({ min: 1, max: 9000 });
const placement = fc.constantFrom([0.5, 0, 3, 0, -0.5, 7], [0, 1.25, -4, -1.25, 0, 9]);

const site = fc.record({
  bases: things(
    fc.record({
      name: word,
      apron: point,
      footprints: fc.array(points, { maxLength: 2 }),
      note: fc.option(word, { nil: undefined }),
    }),
  ),
  marks: things(
    fc.record({
      kind: fc.constantFrom('green site', 'tee site', 'landing ground'),
      at: point,
      verdict: fc.constantFrom('natural', 'needs work'),
      note: fc.option(word, { nil: undefined }),
    }),
  ),
  features: things(
    fc.record({
      kind: fc.constantFrom(...FEATURE_KINDS),
      geometry,
      allows: fc.record({ carry: fc.boolean(), walk: fc.boolean(), mow: fc.boolean(), build: fc.boolean() }),
      buffer: fc.integer({ min: 0, max: 90 }),
      name: fc.option(word, { nil: undefined }),
      authority: fc.option(word, { nil: undefined }),
    }),
  ),
  images: things(
    fc.record({
      ...{ blob: hash, widthPixels: pixels, heightPixels: pixels, placement, opacity: fc.constantFrom(0, 0.4, 1) },
      name: fc.option(word, { nil: undefined }),
      scaledBy: fc.option(fc.constantFrom('guess', 'two points', 'world file'), { nil: undefined }),
    }),
  ),
  sketches: things(
    fc.record({
      shape,
      by: word,
      ink: fc.integer({ min: 0, max: 7 }),
      kept: fc.boolean(),
      note: fc.option(word, { nil: undefined }),
    }),
  ),
  frame: fc.record(
    {
      units: fc.constantFrom('yards', 'metres'),
      grid: fc.record({ easting: metres, northing: metres }),
      note: word,
      boundary: fc.record({
        outlines: fc.array(points, { minLength: 1, maxLength: 2 }),
        inner: fc.constant([]),
        tolerance: fc.constant(2),
      }),
    },
    maybe,
  ),
});

/** The plan with such a site, as any reader takes it in. */
function planWith({ frame, ...lists }: { frame: object }): Plan {
  const parsed = parsePlan({ ...boardPlan(), site: { name: 'Invented site', north: 0.2, ...lists, ...frame } });
  if (parsed.kind !== 'plan') throw new Error(parsed.why);
  return parsed.plan;
}

test('a board of any site comes back equal from the document, and from its file', () => {
  fc.assert(
    fc.property(site, (made) => {
      const plan = planWith(made);
      const document = openPlan(createPlanState(plan));
      expect(document.unread()).toEqual([]);
      expect(canonicalJson(document.read())).toBe(canonicalJson(plan));
      const file = readCourseFile(writeBoardFile(document.read()));
      expect(file.kind === 'board' && canonicalJson(file.plan)).toBe(canonicalJson(plan));
      expect(file.kind === 'board' && file.notes).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

test('the sites tried have every field a site can have', () => {
  const fields: Readonly<Record<keyof Site, true>> = {
    ...{ name: true, north: true, location: true, boundary: true, bases: true, marks: true, features: true },
    ...{ images: true, note: true, units: true, grid: true, sketches: true },
  };
  const tried = new Set(fc.sample(site, { numRuns: 100, seed: 1 }).flatMap((made) => Object.keys(planWith(made).site)));
  expect(Object.keys(fields).filter((field) => !tried.has(field) && field !== 'location')).toEqual([]);
});
