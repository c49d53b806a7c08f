import { canonicalJson, type HoleId, type Plan, parsePlan, type RoutingId } from '@loopwright/model';

/**
 * What is wrong with the holes of a plan: nothing when in every routing each hole that was not removed is listed exactly
 * once, in one loop or in the tray, and the first routing still knows every hole it began with.
 *
 * @param first  the routing that was there at the beginning; nothing is expected of it once it was removed
 */
export function lostOrDoubled(plan: Plan, first: RoutingId, expected: readonly HoleId[]): readonly string[] {
  return plan.routings.flatMap(({ id: routing, loops, spare, holes }) => {
    const listed = [...loops.flatMap((loop) => loop.holes), ...spare];
    const known = new Set(holes.map(({ id }) => id));
    return [
      ...holes.flatMap(({ id, seat }) => {
        const times = listed.filter((other) => other === id).length;
        return times === (seat.in === 'removed' ? 0 : 1) ? [] : [`hole ${routing}/${id} is listed ${times} times`];
      }),
      ...listed.flatMap((id) => (known.has(id) ? [] : [`hole ${routing}/${id} is listed and not there`])),
      ...(routing === first ? expected.filter((id) => !known.has(id)).map((id) => `hole ${id} is lost`) : []),
    ];
  });
}

/** The pages whose plan differs from the first one's. */
export function differing(plans: ReadonlyMap<string, Plan>): readonly string[] {
  const [first] = plans.values();
  const expected = first && canonicalJson(first);
  return [...plans].flatMap(([name, plan]) => (canonicalJson(plan) === expected ? [] : [name]));
}

/** What a plan would lose on its way through a board file: nothing. */
export function lostInAFile(plan: Plan): readonly string[] {
  const text = canonicalJson(plan);
  const parsed = parsePlan(JSON.parse(text));
  if (parsed.kind === 'not-a-plan') return [parsed.why];
  return canonicalJson(parsed.plan) === text
    ? parsed.notes
    : [...parsed.notes, 'a board file reads back as another plan'];
}
