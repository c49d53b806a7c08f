import fc from 'fast-check';
import { expect, test } from 'vitest';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';

const reverse = { edit: 'reverse hole', routing: 'a', hole: 'h1' } as const;
const opened = () => openPlan(createPlanState(smallPlan()));
const first = (plan: ReturnType<typeof opened>) => plan.read().routings[0]?.holes[0];

test('the tee goes where the green was, the green where the tee was, and the turns come the other way round', () => {
  const plan = opened();
  const before = first(plan);
  expect(plan.edit(reverse)).toBe('done');
  const after = first(plan);
  expect(after?.tees.back).toEqual(before?.green?.centre);
  expect(after?.green).toEqual({ ...before?.green, centre: before?.tees.back });
  expect(after?.turnPoints).toEqual([...(before?.turnPoints ?? [])].reverse());
});

test('a forward tee stands as far ahead of the back tee as before, on the new line of play', () => {
  const plan = opened();
  // A straight hole north: back tee at 0, forward tee 60 m on and 4 m to the right, green at 400.
  plan.edit({ edit: 'move part', routing: 'a', hole: 'h4', part: 'tee:back', to: { x: 0, y: 0 } });
  plan.edit({ edit: 'move part', routing: 'a', hole: 'h4', part: 'tee:forward', to: { x: 4, y: 60 } });
  plan.edit({ edit: 'move part', routing: 'a', hole: 'h4', part: 'turn:t1', to: { x: 0, y: 200 } });
  plan.edit({ edit: 'move part', routing: 'a', hole: 'h4', part: 'turn:t2', to: { x: 0, y: 300 } });
  plan.edit({ edit: 'move part', routing: 'a', hole: 'h4', part: 'green', to: { x: 0, y: 400 } });
  plan.edit({ ...reverse, hole: 'h4' });
  // By hand: 60 m south of the new back tee, 4 m to the right of southward play, which is west.
  expect(plan.read().routings[0]?.holes[3]?.tees).toEqual({ back: { x: 0, y: 400 }, forward: { x: -4, y: 340 } });
});

const place = fc.record({ x: fc.integer({ min: -2e6, max: 2e6 }), y: fc.integer({ min: -2e6, max: 2e6 }) });
const toMetres = ({ x, y }: { x: number; y: number }) => ({ x: x / 1000, y: y / 1000 });

test('reversing twice is nothing, to the millimetre, whatever the hole', () => {
  fc.assert(
    fc.property(fc.array(place, { minLength: 5, maxLength: 5 }), (places) => {
      const plan = opened();
      const parts = ['tee:back', 'tee:forward', 'turn:t1', 'turn:t2', 'green'] as const;
      parts.forEach((part, index) => {
        const to = toMetres(places[index] ?? { x: 0, y: 0 });
        plan.edit({ edit: 'move part', routing: 'a', hole: 'h1', part, to });
      });
      const before = first(plan);
      plan.edit(reverse);
      plan.edit(reverse);
      expect(first(plan)).toEqual(before);
    }),
    { numRuns: 300 },
  );
});

test('a hole without a green has no other way to be played', () => {
  const plan = openPlan();
  const base = smallPlan();
  const routings = base.routings.map((routing) => ({
    ...routing,
    holes: routing.holes.map(({ green, ...hole }) => (hole.id === 'h1' || !green ? hole : { ...hole, green })),
  }));
  plan.edit({ edit: 'lay out plan', plan: { ...base, routings } });
  expect(plan.edit(reverse)).toBe('nothing');
  expect(plan.edit({ ...reverse, hole: 'h2' })).toBe('done');
});
