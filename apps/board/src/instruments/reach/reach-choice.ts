import type { ModelPlayer, Plan } from '@loopwright/model';
import { openSlot, type Slot } from '../../live/slot.ts';
import { FIRST_CLUBS } from './reach-arcs.ts';

/** What is chosen beside the reach; kept while the board is open. */
export interface ReachChoice {
  /** Empty until the board's tee sets have said for whom it is made. */
  readonly players: Slot<readonly ModelPlayer[]>;
  readonly clubs: Slot<readonly string[]>;
}

export function openReachChoice(): ReachChoice {
  return { players: openSlot<readonly ModelPlayer[]>([]), clubs: openSlot(FIRST_CLUBS) };
}

/** The players to begin with: those of the first and the last tee set. */
export function firstPlayers({ teeSets }: Pick<Plan, 'teeSets'>): readonly ModelPlayer[] {
  const players = [teeSets[0]?.player, teeSets.at(-1)?.player].filter((player) => player !== undefined);
  return players.length > 0 ? [...new Set(players)] : ['scratch man'];
}
