import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { NamedEdit } from '../edits/named-edit.ts';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';

const PLAN = smallPlan();
const ROUTING = PLAN.routings[0]?.id ?? '';
const HOLES = PLAN.routings[0]?.holes.map(({ id }) => id) ?? [];

const hole = fc.constantFrom(...HOLES);
const way = fc.record({ x: fc.integer({ min: -99, max: 99 }), y: fc.integer({ min: -99, max: 99 }) });
const liveEdit: fc.Arbitrary<NamedEdit> = fc.oneof(
  fc.record({ edit: fc.constant('move hole' as const), routing: fc.constant(ROUTING), hole, by: way }),
  fc.record({
    edit: fc.constant('move part' as const),
    routing: fc.constant(ROUTING),
    hole,
    part: fc.constantFrom('green' as const, 'tee:back' as const),
    to: way,
  }),
  fc.record({ edit: fc.constant('swap places' as const), routing: fc.constant(ROUTING), hole, with: hole }),
  fc.record({ edit: fc.constant('reverse hole' as const), routing: fc.constant(ROUTING), hole }),
  fc.record({ edit: fc.constant('take out' as const), routing: fc.constant(ROUTING), hole }),
);

test('the plan with edits laid over is the plan after they were done one by one', () => {
  fc.assert(
    fc.property(fc.array(liveEdit, { maxLength: 12 }), (edits) => {
      const [shown, done] = [openPlan(), openPlan()];
      for (const plan of [shown, done]) plan.edit({ edit: 'lay out plan', plan: PLAN });
      const before = shown.read();
      for (const edit of edits) done.edit(edit);
      expect(shown.readWith(edits)).toEqual(done.read());
      expect(shown.read()).toBe(before);
    }),
    { numRuns: 150 },
  );
});

test('of several drags, a hole whose drag rests stays the same object', () => {
  const plan = openPlan();
  plan.edit({ edit: 'lay out plan', plan: PLAN });
  const [first, second] = HOLES;
  if (first === undefined || second === undefined) throw new Error('the small plan has two holes');
  const moved = (which: string, x: number): NamedEdit => ({
    edit: 'move hole',
    routing: ROUTING,
    hole: which,
    by: { x, y: 0 },
  });
  const resting = moved(first, 5);
  const lie = (x: number) =>
    plan.readWith([resting, moved(second, x)]).routings[0]?.holes.find(({ id }) => id === first);
  const before = lie(1);
  expect(before).toBeDefined();
  expect(lie(2)).toBe(before);
});
