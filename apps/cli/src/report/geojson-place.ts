import type { FindingPlace } from '@loopwright/analysis';
import { lonLatOf } from '@loopwright/formats';
import type { Site, SitePoint } from '@loopwright/model';

type Position = readonly [number, number];

/** Where a finding lies, as a GeoJSON geometry; null for one that has no single place. */
export type GeoJsonPlace =
  | { readonly type: 'Point'; readonly coordinates: Position }
  | { readonly type: 'LineString'; readonly coordinates: readonly Position[] }
  | null;

/**
 * Turns places of the site into GeoJSON: longitude and latitude (1e-7 degrees, about 1 cm) where the site has a location
 * on a UTM zone, else metres east and north on the site plane.
 */
export function placesOf(site: Site): (place: FindingPlace) => GeoJsonPlace {
  const toLonLat = site.location && lonLatOf(site.location);
  const position = (point: SitePoint): Position => {
    if (!toLonLat) return [point.x, point.y];
    const { lon, lat } = toLonLat(point);
    return [Math.round(lon * 1e7) / 1e7, Math.round(lat * 1e7) / 1e7];
  };
  return (place) => {
    if (place.type === 'point') return { type: 'Point', coordinates: position(place.at) };
    if (place.type === 'round') return null;
    const [only, second] = place.points;
    if (only && !second) return { type: 'Point', coordinates: position(only) };
    return only ? { type: 'LineString', coordinates: place.points.map(position) } : null;
  };
}
