import { holesTouchedBy, type NamedEdit, type Person } from '@loopwright/document';
import { type HoleId, holeOf, type Plan, type Routing } from '@loopwright/model';
import { holeWords, namesOf } from '../reading/names.ts';
import { shortName } from '../reading/short-name.ts';
import { goneThingOf, thingGoneWords } from './gone-thing.ts';

/** What is said of a drag that is let go, given the plan as it was shown and everybody else at the board. */
type LetGoWords = (before: Plan, others: readonly Pick<Person, 'name'>[]) => string;

/** Whether a drag holds something that is not on the plan any more, and what is to be said of that. */
export function goneMeanwhile(edit: NamedEdit, written: Plan): LetGoWords | undefined {
  const hole = goneHoleOf(edit, written);
  if (hole) return (before, others) => letGoWords(hole, before, others);
  const thing = goneThingOf(edit, written);
  return thing && ((before, others) => thingGoneWords(thing, before, others));
}

/** A hole of a drag that is no longer on the plan, with its routing. */
export interface GoneHole {
  readonly routing: Routing;
  readonly hole: HoleId;
}

/** The first hole of a drag that was removed from the plan; a hole that is only being drawn is none. */
export function goneHoleOf(edit: NamedEdit, written: Plan): GoneHole | undefined {
  for (const routing of written.routings) {
    const hole = holesTouchedBy(edit, routing.id).find((id) => holeOf(routing, id)?.seat.in === 'removed');
    if (hole !== undefined) return { routing, hole };
  }
  return undefined;
}

/**
 * What is said when a drag had to be let go: 'Hole 4 was removed by Ann meanwhile; your drag was let go.'
 *
 * @param before  the plan as it was shown: the hole still has its number there
 * @param others  everybody else at the board: of one we know the name, of several not whose deed it was
 */
export function letGoWords(gone: GoneHole, before: Plan, others: readonly Pick<Person, 'name'>[]): string {
  const was = before.routings.find(({ id }) => id === gone.routing.id) ?? gone.routing;
  const words = holeWords(was, namesOf(before, was, 'metres'), gone.hole);
  const [only, ...more] = others;
  const by = only && more.length === 0 ? shortName(only.name) : 'somebody else';
  return `${words.slice(0, 1).toLocaleUpperCase('en')}${words.slice(1)} was removed by ${by} meanwhile; your drag was let go.`;
}
