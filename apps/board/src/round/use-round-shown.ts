import type { RoundId, Routing, RoutingId } from '@loopwright/model';
import { useState } from 'react';

/** Which round of each routing the string shows; `undefined` is all loops, and a round that is gone. */
export function useRoundShown(routing: Routing): readonly [RoundId | undefined, (round: RoundId | undefined) => void] {
  const [chosen, setChosen] = useState<ReadonlyMap<RoutingId, RoundId | undefined>>(new Map());
  const wanted = chosen.get(routing.id);
  const round = routing.rounds.find(({ id }) => id === wanted)?.id;
  return [round, (next) => setChosen(new Map(chosen).set(routing.id, next))];
}
