import { polylineLength, ringArea } from '@loopwright/geometry';
import {
  type Feature,
  type FeatureGeometry,
  type FeatureKind,
  LIMITS,
  parseName,
  presetOf,
  type Ring,
  type SitePoint,
} from '@loopwright/model';
import type { Element, LonLat } from '../geojson/element.ts';
import { counted, type NoteBook } from '../note.ts';
import { thinnedLine, thinnedRing } from './thinned.ts';

/** Something mapped, and what it becomes on the board. */
export interface FeatureInHand {
  readonly element: Element;
  readonly kind: FeatureKind;
  readonly name?: string;
  /** What else is known of it, instead of what its kind begins with. */
  readonly more?: Partial<Pick<Feature, 'buffer' | 'authority' | 'note' | 'height'>>;
}

type ToSite = (position: LonLat) => SitePoint;

/** Features of the site from mapped things: each part of an area and each piece of a line is one. */
export function siteFeatures(things: readonly FeatureInHand[], toSite: ToSite, notes: NoteBook): readonly Feature[] {
  const thinned = { count: 0, within: 0, cutOuts: 0 };
  const features: Feature[] = [];
  let tooMany = 0;
  let nothing = 0;
  for (const { element, kind, name = element.tags.name, more } of things) {
    for (const geometry of geometriesOf(element, toSite, thinned)) {
      if (geometry === undefined) nothing += 1;
      else if (features.length >= LIMITS.features) tooMany += 1;
      else features.push({ ...featureOf(features.length, kind, name, geometry), ...more });
    }
  }
  if (thinned.count > 0)
    notes.add(
      `${counted(thinned.count, 'outline or line', 'outlines and lines')} of more than ${LIMITS.ringPoints} points drawn with fewer, at most ${thinned.within.toFixed(1)} m off.`,
    );
  if (thinned.cutOuts > 0)
    notes.add(
      `Left out, since an area takes ${LIMITS.ringsPerArea} outlines: ${counted(thinned.cutOuts, 'outline')} cut out of larger ones; that ground counts as covered.`,
    );
  if (nothing > 0) notes.add(`Left out for want of extent: ${counted(nothing, 'mapped thing')}.`);
  if (tooMany > 0) notes.add(`Left out, since a board takes ${LIMITS.features}: ${counted(tooMany, 'feature')}.`);
  return features;
}

function featureOf(index: number, kind: FeatureKind, name: string | undefined, geometry: FeatureGeometry): Feature {
  const shown = parseName(name, LIMITS.name);
  return {
    id: `f${String(index + 1).padStart(4, '0')}`,
    kind,
    ...(shown && { name: shown }),
    geometry,
    ...presetOf(kind),
  };
}

interface Thinned {
  count: number;
  within: number;
  /** Outlines cut out of an area beyond those it takes. */
  cutOuts?: number;
}

function geometriesOf({ shape }: Element, toSite: ToSite, thinned: Thinned): readonly (FeatureGeometry | undefined)[] {
  if (shape.type === 'point') return [{ type: 'point', at: toSite(shape.at) }];
  if (shape.type === 'line')
    return shape.pieces.map((piece) => {
      const { points, within } = thinnedLine(piece.map(toSite));
      count(thinned, within);
      return polylineLength(points) > 0 ? { type: 'line', points } : undefined;
    });
  return shape.parts.map((rings) => {
    thinned.cutOuts = (thinned.cutOuts ?? 0) + Math.max(0, rings.length - LIMITS.ringsPerArea);
    const [outer, ...cut] = rings.slice(0, LIMITS.ringsPerArea).map((ring) => ringOnSite(ring, toSite, thinned));
    return outer && { type: 'area', rings: [outer, ...cut.flatMap((ring) => (ring ? [ring] : []))] };
  });
}

/** An outline on the site plane; undefined when it has no area or nothing is left of it. */
export function ringOnSite(ring: readonly LonLat[], toSite: ToSite, thinned: Thinned): Ring | undefined {
  const points = ring.map(toSite);
  const distinct = points.filter((point, index) => {
    const before = points[index === 0 ? points.length - 1 : index - 1];
    return point.x !== before?.x || point.y !== before.y;
  });
  const outline = thinnedRing(distinct);
  if (outline === undefined || outline.points.length < 3 || ringArea(outline.points) === 0) return undefined;
  count(thinned, outline.within);
  return outline.points;
}

function count(thinned: Thinned, within: number): void {
  if (within === 0) return;
  thinned.count += 1;
  thinned.within = Math.max(thinned.within, within);
}
