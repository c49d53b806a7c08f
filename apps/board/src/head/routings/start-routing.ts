import type { NamedEdit } from '@loopwright/document';
import { newPlan, type RoutingId, type StartingHoles } from '@loopwright/model';

interface NewRouting {
  readonly routing: RoutingId;
  readonly name: string;
  readonly holes: StartingHoles;
  readonly freshId: (letter: string) => string;
}

/** The edit that starts an empty routing, with the loops and rounds a new board would have for so many holes. */
export function startRoutingEdit({ routing, name, holes, freshId }: NewRouting): NamedEdit {
  const [like] = newPlan({ name: '', units: 'metres', holes, freshId }).routings;
  return {
    edit: 'start routing',
    routing,
    name,
    loops: (like?.loops ?? []).map((loop) => ({ id: loop.id, name: loop.name })),
    rounds: like?.rounds ?? [],
  };
}

/** What a choice of starting holes reads. */
export const STARTING_WORDS: Readonly<Record<StartingHoles, string>> = {
  9: '9 holes, one loop',
  18: '18 holes, two loops',
  27: '27 holes: A + B, B + C, C + A',
  'loop of six': 'a loop of six',
};
