import { seededRandom } from '@loopwright/model';
import { expect, test } from 'vitest';
import { smallPlan } from './fixtures/small-plan.ts';
import { openPlan } from './plan-document.ts';
import { createPlanState } from './server/create-plan-state.ts';

test('a drop takes at most 40 bytes once the room is compacted', () => {
  const random = seededRandom(3);
  const plan = openPlan(createPlanState(smallPlan()));
  const before = plan.state().length;
  const drops = 500;
  for (let i = 0; i < drops; i++) {
    const to = { x: random() * 2000, y: random() * 2000 };
    plan.edit({ edit: 'move part', routing: 'a', hole: `h${1 + (i % 4)}`, part: 'green', to });
  }
  const compacted = openPlan(plan.state()).state();
  expect((compacted.length - before) / drops).toBeLessThanOrEqual(40);
});
