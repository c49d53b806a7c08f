import type { LonLat } from './element.ts';

/** What came up while positions were read; counted, since a file may have thousands. */
export interface PositionCounts {
  heights: number;
  unreadable: number;
  openRings: number;
  vertices: number;
}

/** Vertices of the largest file taken in. */
export const MOST_VERTICES = 2_000_000;

/** One position: two finite numbers; a height is counted and left. */
export function readPosition(value: unknown, counts: PositionCounts): LonLat | undefined {
  counts.vertices += 1;
  if (Array.isArray(value)) {
    const [lon, lat, height] = value as readonly unknown[];
    if (typeof lon === 'number' && typeof lat === 'number' && Number.isFinite(lon) && Number.isFinite(lat)) {
      if (height !== undefined) counts.heights += 1;
      return { lon, lat };
    }
  }
  counts.unreadable += 1;
  return undefined;
}

/** A run of positions; unreadable ones and repeats in the same place are left out. */
export function readRun(value: unknown, counts: PositionCounts): readonly LonLat[] {
  if (!Array.isArray(value)) return [];
  const run: LonLat[] = [];
  for (const member of value as readonly unknown[]) {
    if (counts.vertices > MOST_VERTICES) break;
    const position = readPosition(member, counts);
    const last = run.at(-1);
    if (position && !(last && last.lon === position.lon && last.lat === position.lat)) run.push(position);
  }
  return run;
}

/** A closed outline without its closing repeat; one that was not closed is counted and closed. */
export function readOutline(value: unknown, counts: PositionCounts): readonly LonLat[] | undefined {
  const run = readRun(value, counts);
  const first = run[0];
  const last = run.at(-1);
  const isClosed = first && last && run.length > 1 && first.lon === last.lon && first.lat === last.lat;
  if (run.length >= 3 && !isClosed) counts.openRings += 1;
  const outline = isClosed ? run.slice(0, -1) : run;
  return outline.length >= 3 ? outline : undefined;
}
