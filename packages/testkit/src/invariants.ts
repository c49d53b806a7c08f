import { canonicalJson, type HoleId, type Plan } from '@loopwright/model';

/** Where each hole of a routing sits, as the round and the tray list it. */
function listedHoles(plan: Plan): readonly HoleId[] {
  return plan.routings.flatMap(({ loops, spare }) => [...loops.flatMap(({ holes }) => holes), ...spare]);
}

/** What is wrong with the holes of a plan: nothing when each of those expected is listed exactly once. */
export function lostOrDoubled(plan: Plan, expected: readonly HoleId[]): readonly string[] {
  const listed = listedHoles(plan);
  return expected.flatMap((id) => {
    const times = listed.filter((other) => other === id).length;
    return times === 1 ? [] : [`hole ${id} is listed ${times} times`];
  });
}

/** The pages whose plan differs from the first one's. */
export function differing(plans: ReadonlyMap<string, Plan>): readonly string[] {
  const [first] = plans.values();
  const expected = first && canonicalJson(first);
  return [...plans].flatMap(([name, plan]) => (canonicalJson(plan) === expected ? [] : [name]));
}
