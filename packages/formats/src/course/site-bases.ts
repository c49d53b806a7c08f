import { distanceBetween, distanceToRing, pointBetween } from '@loopwright/geometry';
import { type Base, LIMITS, parseName, pointToMillimetre, type SitePoint } from '@loopwright/model';
import type { Element, LonLat } from '../geojson/element.ts';
import type { NoteBook } from '../note.ts';
import { ringOnSite } from './site-features.ts';

interface Ends {
  readonly firstTee: SitePoint;
  readonly lastGreen: SitePoint;
}

/**
 * Bases from the mapped clubhouses, the one nearest to first tee and last green first. Golfers gather on the side of the
 * building that faces the middle between those two.
 */
export function siteBases(
  clubhouses: readonly Element[],
  { firstTee, lastGreen }: Ends,
  toSite: (position: LonLat) => SitePoint,
  notes: NoteBook,
): readonly Base[] {
  const middle = pointBetween(firstTee, lastGreen, 0.5);
  const found = clubhouses.map(({ shape, tags }) => {
    const thinned = { count: 0, within: 0 };
    const rings = shape.type === 'area' ? shape.parts.flatMap((part) => part.slice(0, 1)) : [];
    const footprints = rings.flatMap((ring) => {
      const footprint = ringOnSite(ring, toSite, thinned);
      return footprint ? [footprint] : [];
    });
    const at =
      shape.type === 'point' ? toSite(shape.at) : shape.type === 'line' ? toSite(firstOf(shape.pieces)) : middle;
    const near = footprints.map((footprint) => distanceToRing(middle, footprint));
    const apron = near.reduce(
      (best, side) => (side.distance < best.distance ? side : best),
      near[0] ?? { point: at, distance: 0 },
    );
    return {
      name: tags.name,
      apron: pointToMillimetre(apron.point),
      footprints,
      off: distanceBetween(middle, apron.point),
    };
  });
  if (found.length === 0)
    notes.add('No clubhouse is mapped: walks to and from a base are missing until one is placed.', 'Base');
  if (found.length > 1) notes.add(`${found.length} clubhouses are mapped; the holes start from the nearest.`, 'Base');
  return found
    .sort((a, b) => a.off - b.off)
    .slice(0, LIMITS.bases)
    .map(({ name, apron, footprints }, index) => ({
      id: `base-${index + 1}`,
      name: parseName(name, LIMITS.name) ?? (index === 0 ? 'Clubhouse' : `Clubhouse ${index + 1}`),
      apron,
      footprints: footprints.slice(0, LIMITS.footprints),
    }));
}

function firstOf(pieces: readonly (readonly LonLat[])[]): LonLat {
  return pieces[0]?.[0] ?? { lon: 0, lat: 0 };
}
