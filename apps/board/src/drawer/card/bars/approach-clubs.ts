import { type Analysis, CLUB_SHARES, type RoundFigures } from '@loopwright/analysis';
import type { Reading } from '../../../board/parts.ts';
import type { Names } from '../../../reading/names.ts';
import { teeOf } from '../../../reading/tee-in-use.ts';

/** The holes whose green is played to with one club, in playing order. */
export interface ClubHoles {
  readonly club: string;
  readonly holes: readonly string[];
}

/** Greens reached with the tee shot: no approach is left. */
const FROM_THE_TEE = 'from the tee';

/** Longest club first, as they stand in a bag; shots shorter than any full club last. */
const ORDER: readonly string[] = [FROM_THE_TEE, ...CLUB_SHARES.map(({ club }) => club), 'part shot'];

/**
 * Which clubs a round asks for into its greens, for the model player of the tee set in use: a round that asks for one
 * club six times shows it. Clubs between the longest and the shortest used are listed, unused ones too.
 */
export function toClubHoles(
  analysis: Analysis,
  round: RoundFigures,
  reading: Reading,
  names: Names,
): readonly ClubHoles[] {
  const byClub = new Map<string, string[]>();
  for (const hole of round.holes) {
    const figures = analysis.holes.get(hole);
    const tee = teeOf(figures, reading.teeSet);
    if (!figures || figures.missing || !tee) continue;
    const club = tee.approachClub ?? FROM_THE_TEE;
    byClub.set(club, [...(byClub.get(club) ?? []), names.number(hole)]);
  }
  const clubs = ORDER.filter((club) => club !== FROM_THE_TEE);
  const used = clubs.filter((club) => byClub.has(club));
  const [first, last] = [used[0], used.at(-1)].map((club) => clubs.indexOf(club ?? ''));
  const between = clubs.slice(first ?? 0, (last ?? -1) + 1);
  const listed = byClub.has(FROM_THE_TEE) ? [FROM_THE_TEE, ...between] : between;
  return listed.map((club) => ({ club, holes: byClub.get(club) ?? [] }));
}
