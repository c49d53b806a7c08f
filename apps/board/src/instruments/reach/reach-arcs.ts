import { CLUB_SHARES, reachOf } from '@loopwright/analysis';
import type { ModelPlayer, Settings } from '@loopwright/model';

/** How far one club goes in one model player's hands. */
export interface ReachArc {
  readonly player: ModelPlayer;
  readonly club: string;
  /** Metres. */
  readonly distance: number;
}

export const MODEL_PLAYERS: readonly ModelPlayer[] = ['scratch man', 'bogey man', 'scratch woman', 'bogey woman'];
export const CLUBS: readonly string[] = CLUB_SHARES.map(({ club }) => club);
/** Enough to see the ladder, few enough to read. */
export const FIRST_CLUBS: readonly string[] = ['driver', '3 wood', '5 iron', '7 iron', '9 iron', 'pitching wedge'];

/** The second full shot, played off the ground. */
const SECOND = 'second full shot';

/**
 * The arcs of the chosen players and clubs, longest first, player by player.
 *
 * Off a tee each club is a share of the drive; on from a turn nothing goes further than the player's second full shot,
 * which has an arc of its own there. Players' distances are the board's settings.
 *
 * Source of the shares: `CLUB_SHARES` of the analysis.
 */
export function reachArcs(
  players: readonly ModelPlayer[],
  clubs: readonly string[],
  settings: Settings,
  from: 'tee' | 'turn',
): readonly ReachArc[] {
  return players.flatMap((player) => {
    const { drive, second } = reachOf(player, settings);
    const arcs = CLUB_SHARES.filter(({ club }) => clubs.includes(club)).map(({ club, share }) => ({
      player,
      club,
      distance: share * drive,
    }));
    if (from === 'tee') return arcs;
    return [{ player, club: SECOND, distance: second }, ...arcs.filter(({ distance }) => distance < second)];
  });
}
