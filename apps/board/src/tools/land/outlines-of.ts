import type { OutlineOf } from '@loopwright/document';
import type { Feature, Site, SitePoint } from '@loopwright/model';
import type { SiteThing } from '../../board/parts.ts';

/** One outline, line or single place of something on the site, whose vertices can be taken hold of. */
export interface OutlineShown {
  readonly outline: OutlineOf;
  readonly points: readonly SitePoint[];
  /** Whether the last point is joined to the first. */
  readonly isClosed: boolean;
}

const NONE: readonly OutlineShown[] = [];

/** The outlines of a thing, outer ones first; none of what has no vertices, or is gone. */
export function outlinesOf(site: Site, thing: SiteThing): readonly OutlineShown[] {
  switch (thing.kind) {
    case 'boundary':
      return (['outlines', 'inner'] as const).flatMap((part) =>
        (site.boundary?.[part] ?? []).map((points, ring) => closed({ of: 'boundary', part, ring }, points)),
      );
    case 'base':
      return (site.bases.find(({ id }) => id === thing.id)?.footprints ?? []).map((points, ring) =>
        closed({ of: 'base', base: thing.id, ring }, points),
      );
    case 'feature': {
      const feature = site.features.find(({ id }) => id === thing.id);
      return feature ? featureOutlines(feature) : NONE;
    }
    case 'sketch':
      return sketchOutlines(site, thing.id);
    default:
      return NONE;
  }
}

const closed = (outline: OutlineOf, points: readonly SitePoint[]): OutlineShown => ({
  outline,
  points,
  isClosed: true,
});
const open = (outline: OutlineOf, points: readonly SitePoint[]): OutlineShown => ({ outline, points, isClosed: false });

function featureOutlines({ id, geometry }: Feature): readonly OutlineShown[] {
  const of = (ring: number) => ({ of: 'feature', feature: id, ring }) as const;
  if (geometry.type === 'area') return geometry.rings.map((points, ring) => closed(of(ring), points));
  return [open(of(0), geometry.type === 'line' ? geometry.points : [geometry.at])];
}

/** Measures have corners to be moved; a pencil line is drawn again, a rod is swung, and a ring goes by its middle. */
function sketchOutlines(site: Site, id: string): readonly OutlineShown[] {
  const shape = site.sketches?.find((sketch) => sketch.id === id)?.shape;
  const outline = { of: 'sketch', sketch: id } as const;
  switch (shape?.kind) {
    case 'measured area':
      return [closed(outline, shape.ring)];
    case 'measured line':
      return [open(outline, shape.points)];
    case 'ring':
      return 'at' in shape.about ? [open(outline, [shape.about.at])] : NONE;
    default:
      return NONE;
  }
}

/** The thing an outline belongs to. */
export function thingOf(outline: OutlineOf): SiteThing {
  switch (outline.of) {
    case 'boundary':
      return { kind: 'boundary' };
    case 'base':
      return { kind: 'base', id: outline.base };
    case 'feature':
      return { kind: 'feature', id: outline.feature };
    case 'sketch':
      return { kind: 'sketch', id: outline.sketch };
  }
}

/** The points of one outline as they lie now; `undefined` when it is gone. */
export function outlineNow(site: Site, outline: OutlineOf): OutlineShown | undefined {
  return outlinesOf(site, thingOf(outline)).find((shown) => sameOutline(shown.outline, outline));
}

export function sameOutline(one: OutlineOf, other: OutlineOf): boolean {
  if (one.of === 'boundary') return other.of === 'boundary' && one.part === other.part && one.ring === other.ring;
  if (one.of === 'base') return other.of === 'base' && one.base === other.base && one.ring === other.ring;
  if (one.of === 'feature') return other.of === 'feature' && one.feature === other.feature && one.ring === other.ring;
  return other.of === 'sketch' && one.sketch === other.sketch;
}

export function sameThing(one: SiteThing | undefined, other: SiteThing | undefined): boolean {
  if (!one || !other || one.kind !== other.kind) return false;
  return 'id' in one && 'id' in other ? one.id === other.id : true;
}
