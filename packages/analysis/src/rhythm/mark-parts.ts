import { distanceBetween } from '@loopwright/geometry';
import type { SiteMark, SitePoint, TeeSetId } from '@loopwright/model';
import type { HoleFigures } from '../figures.ts';

/** The part of a hole that can take up a site mark. */
export type MarkPart = 'green' | `tee:${TeeSetId}` | 'landing area';

/** A part of a hole that could take up a mark, and how far it lies from it, metres. */
export interface PartNearMark {
  readonly part: MarkPart;
  readonly distance: number;
}

/**
 * The part of a hole that lies nearest to a site mark, of those that could take it up: the green for a green site, any
 * tee (proposed ones too) for a tee site, any landing area for landing ground. `undefined` when it has none.
 */
export function findPartNearest(mark: Pick<SiteMark, 'kind' | 'at'>, hole: HoleFigures): PartNearMark | undefined {
  let nearest: PartNearMark | undefined;
  for (const { part, at } of partsFor(mark.kind, hole)) {
    const distance = distanceBetween(mark.at, at);
    if (!nearest || distance < nearest.distance) nearest = { part, distance };
  }
  return nearest;
}

interface PlacedPart {
  readonly part: MarkPart;
  readonly at: SitePoint;
}

function partsFor(kind: SiteMark['kind'], { tees, centreline }: HoleFigures): readonly PlacedPart[] {
  if (kind === 'green site') return centreline.slice(-1).map((at) => ({ part: 'green', at }));
  if (kind === 'tee site') return tees.map(({ teeSet, at }) => ({ part: `tee:${teeSet}`, at }));
  return tees.flatMap(({ landingAreas }) => landingAreas).map((at) => ({ part: 'landing area', at }));
}
