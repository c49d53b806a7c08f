import type { NamedEdit, Person } from '@loopwright/document';
import { holeOf, type Plan, type Routing, type RoutingId } from '@loopwright/model';
import type { Change, Consequences } from '../board/parts.ts';

/** Everything one animation frame shows of the plan: everybody's hands laid over it, and what follows. */
export interface Frame extends Consequences {
  /** What the drag in progress does, or what the last change did. */
  readonly change?: Change;
  /** Everybody's drags in progress; mine last. */
  readonly drags: readonly NamedEdit[];
  /** Whether one of them is mine. */
  readonly mineInHand: boolean;
}

/** A drag that somebody shows right now. */
export interface LiveDrag {
  readonly by: 'me' | Pick<Person, 'client' | 'name' | 'ink'>;
  readonly edit: NamedEdit;
}

/** The routing to show: the chosen one, else the first. `undefined` on a plan without any. */
export function routingShown(plan: Plan, chosen: RoutingId | undefined): Routing | undefined {
  return plan.routings.find((routing) => routing.id === chosen) ?? plan.routings[0];
}

/** Others' drags in a fixed order, so that every page lays them over the plan alike. */
export function dragsOf(people: readonly Person[]): readonly LiveDrag[] {
  return people
    .flatMap((person) => (person.drag ? [{ by: person, edit: person.drag }] : []))
    .sort((a, b) => a.by.client - b.by.client);
}

/** Whether an edit made any difference to the routing: a drag that was dropped and committed makes none any more. */
export function differs(before: Plan, after: Plan, edit: NamedEdit, routing: RoutingId): boolean {
  const one = before.routings.find(({ id }) => id === routing);
  const other = after.routings.find(({ id }) => id === routing);
  if (!one || !other) return one !== other;
  if ('hole' in edit && edit.routing === routing) {
    return holeOf(one, edit.hole) !== holeOf(other, edit.hole) || one.loops !== other.loops;
  }
  return one !== other;
}
