import { type Hole, type Plan, seededRandom } from '@loopwright/model';
import { bench } from 'vitest';
import type { NamedEdit } from './edits/named-edit.ts';
import { smallHole, smallPlan } from './fixtures/small-plan.ts';
import { openPlan } from './plan-document.ts';
import { createPlanState } from './server/create-plan-state.ts';

/** Eighteen holes and forty features, as a board of one course has. */
function fullPlan(): Plan {
  const plan = smallPlan();
  const holes: Hole[] = Array.from({ length: 18 }, (_, index) =>
    smallHole(`h${index}`, `a${index % 10}V`, index * 100),
  );
  const features = plan.site.features.flatMap((feature) =>
    Array.from({ length: 40 }, (_, index) => ({ ...feature, id: `f${index}` })),
  );
  const routings = plan.routings.map((routing) => ({ ...routing, holes, spare: [] }));
  return { ...plan, site: { ...plan.site, features }, routings };
}

const random = seededRandom(1);
const plan = openPlan(createPlanState(fullPlan()));
const drag = (hole: number): NamedEdit => ({
  edit: 'move part',
  routing: 'a',
  hole: `h${hole}`,
  part: 'green',
  to: { x: random() * 2000, y: random() * 2000 },
});
let checksum = 0;

bench('a frame of one’s own drag, 10 others dragging and each of them moved', () => {
  const others = Array.from({ length: 10 }, (_, index) => drag(index));
  const before = plan.readWith(others);
  const after = plan.readWith([...others, drag(12)]);
  checksum += before.routings.length + after.routings.length;
  if (checksum < 0) throw new Error('unread');
});

bench('a frame of one’s own drag alone', () => {
  checksum += plan.readWith([drag(12)]).routings.length;
});
