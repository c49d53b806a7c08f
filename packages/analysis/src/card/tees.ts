import { polylineLength } from '@loopwright/geometry';
import type { Hole, ModelPlayer, Settings, SitePoint, TeeSet, TeeSetId } from '@loopwright/model';
import { toMillimetre } from '@loopwright/model';
import { reachOf } from './model-player.ts';
import { playLine } from './play-line.ts';
import { proposedTee } from './proposed-tee.ts';

/** A tee and the line of play from it, before any par is known. */
export interface TeeLine {
  readonly teeSet: TeeSetId;
  readonly player: ModelPlayer;
  readonly at: SitePoint;
  readonly proposed: boolean;
  readonly line: readonly SitePoint[];
  readonly measuredLength: number;
}

/** Place, in the order of tee sets, of the longest tee that the designer has placed; `undefined` when there is none. */
export function longestPlaced(hole: Hole, teeSets: readonly TeeSet[]): number | undefined {
  const place = teeSets.findIndex(({ id }) => hole.tees[id] !== undefined);
  return place < 0 ? undefined : place;
}

/**
 * One tee for every tee set: as placed, else as proposed.
 *
 * @param main  tee, turn points, green centre, from the longest placed tee
 * @param mainPlace  that tee's place in the order of tee sets
 */
export function teeLines(
  hole: Hole,
  teeSets: readonly TeeSet[],
  main: readonly SitePoint[],
  mainPlace: number,
  settings: Settings,
): readonly TeeLine[] {
  const mainPlayer = teeSets[mainPlace]?.player ?? 'scratch man';
  const mainDrive = reachOf(mainPlayer, settings).drive;
  return teeSets.map(({ id, player }, place) => {
    const placed = hole.tees[id];
    const drive = reachOf(player, settings).drive;
    const ask = { main, mainDrive, drive, setsForward: place - mainPlace, aside: settings['proposed-tee-aside'] };
    const at = placed ?? proposedTee(ask);
    const line = place === mainPlace ? main : playLine(at, main);
    const measuredLength = toMillimetre(polylineLength(line));
    return { teeSet: id, player, at, proposed: placed === undefined, line, measuredLength };
  });
}
