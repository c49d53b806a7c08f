import { bearingOf, minus } from '@loopwright/geometry';
import type { Hole, Settings, SitePoint, TeeSet } from '@loopwright/model';
import { shotFans } from '../clearance/shots.ts';
import type { HoleBeforeFans, HoleFigures } from '../figures.ts';
import { bendsOf } from './bends.ts';
import { corridorShape, corridorStations } from './corridor.ts';
import { holeBounds } from './hole-bounds.ts';
import { holePar, parWithoutLength } from './hole-par.ts';
import { teeFigures } from './tee-figures.ts';
import { longestPlaced, teeLines } from './tees.ts';

/**
 * Everything a hole says by itself: lengths, par, landing areas, bends, corridor and fans.
 *
 * A hole without any placed tee or without a green is incomplete: it says what is missing, and nothing else.
 * It depends on nothing but the hole, the tee sets and the settings, and knows no number: those are the order's.
 */
export function holeFigures(hole: Hole, teeSets: readonly TeeSet[], settings: Settings): HoleFigures {
  const place = longestPlaced(hole, teeSets);
  const tee = place === undefined ? undefined : hole.tees[teeSets[place]?.id ?? ''];
  const green = hole.green?.centre;
  if (place === undefined || !tee) return incomplete(hole, 'tee');
  if (!green) return incomplete(hole, 'green');
  const main = [tee, ...hole.turnPoints.map(({ at }) => at), green];
  const straight = minus(green, tee);
  const before = { ...figuresAlong(hole, main, place, teeSets, settings), bearing: bearingOf(straight) };
  const fans = shotFans(before, settings);
  return { ...before, fans, bounds: holeBounds(before, fans) };
}

function figuresAlong(
  hole: Hole,
  main: readonly SitePoint[],
  place: number,
  teeSets: readonly TeeSet[],
  settings: Settings,
): Omit<HoleBeforeFans, 'bearing'> {
  const lines = teeLines(hole, teeSets, main, place, settings);
  const { par, parsByLength } = holePar(hole, lines);
  const tees = lines.map((line) => teeFigures(line, par, settings));
  const stations = corridorStations(main, tees[place]?.landingAreas ?? [], hole.corridor, settings);
  return {
    id: hole.id,
    centreline: main,
    tees,
    par,
    parsByLength,
    bends: bendsOf(main),
    corridor: corridorShape(main, stations, hole.corridor?.behind ?? settings['corridor-behind']),
    corridorStations: stations,
    ...(hole.green && { green: hole.green }),
    relations: hole.relations,
  };
}

function incomplete(hole: Hole, missing: 'tee' | 'green'): HoleFigures {
  return {
    id: hole.id,
    missing,
    centreline: [],
    tees: [],
    ...parWithoutLength(hole),
    bearing: 0,
    bends: [],
    corridor: [],
    corridorStations: [],
    fans: [],
    relations: hole.relations,
  };
}
