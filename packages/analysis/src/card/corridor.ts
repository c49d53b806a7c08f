import { closestOnPolyline, corridorOutline, pointAlong, polylineLength } from '@loopwright/geometry';
import type { CorridorWidths, Settings, SitePoint } from '@loopwright/model';
import type { CorridorStation } from '../figures.ts';

/**
 * The tapered strip of a hole: its half-width at the tee, at each landing area and at the green, even between.
 *
 * Source of the defaults: North Braddock Borough, Pennsylvania, code §155.156 (75, 150 and 100 ft), a single ordinance.
 */
export function corridorStations(
  line: readonly SitePoint[],
  landings: readonly SitePoint[],
  widths: CorridorWidths | undefined,
  settings: Settings,
): readonly CorridorStation[] {
  const landing = widths?.landing ?? settings['corridor-landing'];
  return [
    { along: 0, halfWidth: widths?.tee ?? settings['corridor-tee'] },
    ...landings.map((at) => ({ along: closestOnPolyline(at, line).along, halfWidth: landing })),
    { along: polylineLength(line), halfWidth: widths?.green ?? settings['corridor-green'] },
  ];
}

/** Half-width of a corridor so many metres from its tee; before the tee and past the green it stays as it is there. */
export function corridorHalfWidthAt(stations: readonly CorridorStation[], along: number): number {
  let before = stations[0];
  if (!before) return 0;
  for (const station of stations) {
    if (station.along >= along) {
      const run = station.along - before.along;
      if (run <= 0) return station.halfWidth;
      const share = Math.max(0, (along - before.along) / run);
      return before.halfWidth + (station.halfWidth - before.halfWidth) * share;
    }
    before = station;
  }
  return before.halfWidth;
}

/** The strip as one outline, for the drawing. */
export function corridorShape(
  line: readonly SitePoint[],
  stations: readonly CorridorStation[],
  behind: number,
): readonly SitePoint[] {
  const places = [...stations.map(({ along }) => along), ...turnsAlong(line)].sort((a, b) => a - b);
  return corridorOutline(
    places.map((along) => pointAlong(line, along)),
    places.map((along) => corridorHalfWidthAt(stations, along)),
    behind,
  );
}

function turnsAlong(line: readonly SitePoint[]): readonly number[] {
  return line.slice(1, -1).map((_, i) => polylineLength(line.slice(0, i + 2)));
}
