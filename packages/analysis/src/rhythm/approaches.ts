import { clubFor } from '../card/club.ts';
import { reachOf } from '../card/model-player.ts';
import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import { idsOf, type RoundHole, runsOf } from './round-holes.ts';
import type { RoundRhythm } from './round-rhythm.ts';

/** Not a club of its own: shorter than any full shot. */
const PART_SHOT = 'part shot';

/**
 * The same club again: into the par 3s of a round, and for approaches in a row on the other holes.
 *
 * Clubs by their share of the longest tee's driver; level, still air. Source: limits common practice, no source.
 */
export function checkApproaches(rhythm: RoundRhythm): readonly Finding[] {
  return [...sameClubIntoParThrees(rhythm), ...sameApproachInARow(rhythm)];
}

function sameClubIntoParThrees({ holes, settings, round, name }: RoundRhythm): readonly Finding[] {
  const byClub = new Map<string, RoundHole[]>();
  for (const hole of holes) {
    if (hole.par !== 3) continue;
    const club = clubFor(hole.tee.measuredLength, reachOf(hole.tee.player, settings).drive);
    byClub.set(club, [...(byClub.get(club) ?? []), hole]);
  }
  const tier = onlyTier('same-club-par-threes-mention', settings);
  return [...byClub].flatMap(([club, same]) =>
    same.length < tier.limit
      ? []
      : [
          roundFinding({
            code: 'same-club-par-threes',
            holes: idsOf(same),
            about: `${round.round}|${club}`,
            measured: same.length,
            tier,
            unit: 'holes',
            worse: 'more',
            detail: { club, round: name },
          }),
        ],
  );
}

function sameApproachInARow({ holes, settings }: RoundRhythm): readonly Finding[] {
  const tier = onlyTier('same-approach-mention', settings);
  const played = holes.filter(({ tee }) => tee.approachClub !== undefined);
  const runs = runsOf(played, (a, b) => a.tee.approachClub === b.tee.approachClub);
  return runs.flatMap((run) => {
    const club = run[0]?.tee.approachClub;
    if (club === undefined || club === PART_SHOT || run.length < tier.limit) return [];
    const noticed = { code: 'same-approach', holes: idsOf(run), measured: run.length, tier } as const;
    return [roundFinding({ ...noticed, unit: 'holes', worse: 'more', detail: { club } })];
  });
}
