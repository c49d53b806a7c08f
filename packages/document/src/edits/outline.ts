import type { Boundary, Feature, FeatureGeometry, Ring, SitePoint, SketchShape } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import { changeThing } from './change-thing.ts';
import type { EditWrites } from './edit-named.ts';
import { setOnSite } from './set-on-site.ts';
import type { OutlineOf } from './site-edit.ts';
import { BASES, FEATURES, SKETCHES } from './thing-kinds.ts';

type Points = readonly SitePoint[];

/** An outline or line that is being changed. */
export interface Outline {
  readonly points: Points;
  /** Whether the last point is joined to the first. */
  readonly isClosed: boolean;
  /** Fewer would be no outline (3), no line (2), no point (1). */
  readonly least: number;
  /** The writes that put these points in place of its own; the rest of the thing stays as it is. */
  write(points: Points): EditWrites;
  /** The same, every point of it and of what is cut out of it put elsewhere. */
  writeEach(to: (point: SitePoint) => SitePoint): EditWrites;
}

/** The outline or line an edit speaks of; `gone` when it, or the thing it belongs to, is not there any more. */
export function outlineOf(of: OutlineOf, reading: Reading): Outline | 'gone' {
  switch (of.of) {
    case 'boundary':
      return boundaryOutline(of.part, of.ring, reading);
    case 'base':
      return footprint(of.base, of.ring, reading);
    case 'feature':
      return featureOutline(of.feature, of.ring, reading);
    case 'sketch':
      return sketchOutline(of.sketch, reading);
  }
}

/** An outline in a list of them. `write` gets the whole list: it is one value. */
function ringIn(rings: readonly Ring[], ring: number, write: (rings: readonly Ring[]) => EditWrites): Outline | 'gone' {
  const points = rings[ring];
  if (!points) return 'gone';
  const replace = (next: Points) => write(rings.map((one, index) => (index === ring ? next : one)));
  return {
    points,
    isClosed: true,
    least: 3,
    write: replace,
    writeEach: (to) => replace(points.map(to)),
  };
}

function boundaryOutline(part: 'outlines' | 'inner', ring: number, reading: Reading): Outline | 'gone' {
  const now = reading.plan.site.boundary;
  if (!now) return 'gone';
  const write = (rings: readonly Ring[]): EditWrites => {
    const boundary: Boundary = { ...now, [part]: rings };
    return setOnSite({ edit: 'draw boundary', boundary }, reading);
  };
  return ringIn(now[part], ring, write);
}

function footprint(id: string, ring: number, reading: Reading): Outline | 'gone' {
  const base = reading.plan.site.bases.find((one) => one.id === id);
  if (!base) return 'gone';
  return ringIn(base.footprints, ring, (footprints) => changeThing(BASES, reading, id, { footprints }));
}

function featureOutline(id: string, ring: number, reading: Reading): Outline | 'gone' {
  const feature = reading.plan.site.features.find((one) => one.id === id);
  if (!feature) return 'gone';
  const write = (geometry: FeatureGeometry) => changeThing(FEATURES, reading, id, { geometry });
  return outlineOfFeature(feature, ring, write);
}

function outlineOfFeature(
  { geometry }: Feature,
  ring: number,
  write: (geometry: FeatureGeometry) => EditWrites,
): Outline | 'gone' {
  if (geometry.type === 'area') {
    const { rings } = geometry;
    const outline = ringIn(rings, ring, (next) => write({ type: 'area', rings: next }));
    if (outline === 'gone' || ring > 0) return outline;
    // What is cut out of an area belongs to it, and goes with its outer outline.
    return { ...outline, writeEach: (to) => write({ type: 'area', rings: rings.map((one) => one.map(to)) }) };
  }
  if (ring > 0) return 'gone';
  if (geometry.type === 'line') return lineOf(geometry.points, (points) => write({ type: 'line', points }));
  return pointOf(geometry.at, (at) => write({ type: 'point', at }));
}

function lineOf(points: Points, write: (points: Points) => EditWrites): Outline {
  return { points, isClosed: false, least: 2, write, writeEach: (to) => write(points.map(to)) };
}

/** A single place, moved as an outline of one point is. */
function pointOf(at: SitePoint, write: (at: SitePoint) => EditWrites): Outline {
  const first = ([only]: Points) => (only ? write(only) : 'nothing');
  return { points: [at], isClosed: false, least: 1, write: first, writeEach: (to) => write(to(at)) };
}

function sketchOutline(id: string, reading: Reading): Outline | 'gone' {
  const sketch = reading.plan.site.sketches?.find((one) => one.id === id);
  if (!sketch) return 'gone';
  const { shape } = sketch;
  const write = (next: SketchShape) => changeThing(SKETCHES, reading, id, { shape: next });
  if (shape.kind === 'measured area')
    return ringIn([shape.ring], 0, ([ring]) => (ring ? write({ ...shape, ring }) : 'nothing'));
  if (shape.kind !== 'ring') return lineOf(shape.points, (points) => write({ ...shape, points }));
  // A ring about a part of a hole follows that part, and lies nowhere by itself.
  return 'at' in shape.about ? pointOf(shape.about.at, (at) => write({ ...shape, about: { at } })) : 'gone';
}
