import { holesTouchedBy, isHoleEdit, type NamedEdit, type Person } from '@loopwright/document';
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
  /** The next picture shows the figures of this frame, so that this one has time for everybody's hands. */
  readonly figuresToCome?: true;
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

/**
 * Whether an edit made any difference to the routing or to the land under it: a drag that was dropped and committed
 * makes none any more. What is only drawn beside the plan makes none.
 */
export function differs(before: Plan, after: Plan, edit: NamedEdit, routing: RoutingId): boolean {
  const one = before.routings.find(({ id }) => id === routing);
  const other = after.routings.find(({ id }) => id === routing);
  if (!one || !other) return one !== other;
  const touched = isHoleEdit(edit) ? holesTouchedBy(edit, routing) : [];
  if (touched.length > 0) {
    return one.loops !== other.loops || touched.some((hole) => holeOf(one, hole) !== holeOf(other, hole));
  }
  return one !== other || groundDiffers(before, after);
}

/** Whether anything differs that lengths, walks and findings follow from, but for the routings. */
function groundDiffers(before: Plan, after: Plan): boolean {
  const { boundary, bases, marks, features } = before.site;
  const { site } = after;
  const isSameLand =
    boundary === site.boundary && bases === site.bases && marks === site.marks && features === site.features;
  return !isSameLand || before.teeSets !== after.teeSets || before.settings !== after.settings;
}
