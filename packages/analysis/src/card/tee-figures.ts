import type { Settings } from '@loopwright/model';
import { toMillimetre } from '@loopwright/model';
import type { HoleFigures, TeeFigures } from '../figures.ts';
import { clubFor } from './club.ts';
import { fullShots } from './full-shots.ts';
import { landingAreas } from './landing-areas.ts';
import { reachOf, sexOf } from './model-player.ts';
import type { TeeLine } from './tees.ts';

/** A tee's length, landing areas, approach and club, once the hole's par is known. */
export function teeFigures(tee: TeeLine, par: HoleFigures['par'], settings: Settings): TeeFigures {
  const { teeSet, player, at, proposed, line, measuredLength } = tee;
  const reach = reachOf(player, settings);
  const { finishes, left } = fullShots(measuredLength, par[sexOf(player)], reach);
  const figures = {
    teeSet,
    at,
    proposed,
    measuredLength,
    player,
    landingAreas: landingAreas(line, measuredLength, finishes, settings['landing-short-of-green']),
  };
  if (finishes.length === 0) return figures;
  return { ...figures, approach: toMillimetre(left), approachClub: clubFor(left, reach.drive) };
}
