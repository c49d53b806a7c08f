import type { NamedEdit, OutlineOf } from '@loopwright/document';
import { plus } from '@loopwright/geometry';
import { type Base, type Boundary, pointToMillimetre, type Site, type SitePoint } from '@loopwright/model';
import type { Selection, SiteThing } from '../../board/parts.ts';
import { outlineNow } from './outlines-of.ts';

/** A vertex of something on the site. */
export type Vertex = NonNullable<Selection['vertex']>;

/** How a thing is moved as a whole: the edit that puts it so far from where it lies; `undefined` when it is gone. */
export function thingMover(site: Site, thing: SiteThing): ((by: SitePoint) => NamedEdit) | undefined {
  switch (thing.kind) {
    case 'mark': {
      const mark = site.marks.find(({ id }) => id === thing.id);
      return mark && ((by) => ({ edit: 'change mark', mark: mark.id, to: { at: moved(mark.at, by) } }));
    }
    case 'base': {
      const base = site.bases.find(({ id }) => id === thing.id);
      return base && ((by) => moveBase(base, by));
    }
    case 'boundary':
      return site.boundary && boundaryMover(site.boundary);
    case 'feature':
      return outlineMover(site, { of: 'feature', feature: thing.id, ring: 0 });
    case 'sketch':
      return outlineMover(site, { of: 'sketch', sketch: thing.id });
    default:
      return undefined;
  }
}

const moved = (at: SitePoint, by: SitePoint): SitePoint => pointToMillimetre(plus(at, by));

/** The apron with its footprints: they were drawn about it. */
function moveBase({ id, apron, footprints }: Base, by: SitePoint): NamedEdit {
  const rings = footprints.map((ring) => ring.map((at) => moved(at, by)));
  const to = { apron: moved(apron, by), ...(rings.length > 0 ? { footprints: rings } : {}) };
  return { edit: 'change base', base: id, to };
}

function boundaryMover(boundary: Boundary): (by: SitePoint) => NamedEdit {
  return (by) => {
    const shift = (rings: Boundary['outlines']) => rings.map((ring) => ring.map((at) => moved(at, by)));
    const { outlines, inner } = boundary;
    return { edit: 'draw boundary', boundary: { ...boundary, outlines: shift(outlines), inner: shift(inner) } };
  };
}

function outlineMover(site: Site, outline: OutlineOf): ((by: SitePoint) => NamedEdit) | undefined {
  const now = outlineNow(site, outline);
  return now && ((by) => ({ edit: 'move outline', outline, by: pointToMillimetre(by) }));
}

/** How one vertex is moved; `undefined` when it is not there any more. */
export function vertexMover(site: Site, { outline, at }: Vertex): ((by: SitePoint) => MoveVertex) | undefined {
  const isThere = outlineNow(site, outline)?.points.some(({ x, y }) => x === at.x && y === at.y);
  return isThere ? (by) => ({ edit: 'move vertex', outline, from: at, to: moved(at, by) }) : undefined;
}

export type MoveVertex = Extract<NamedEdit, { edit: 'move vertex' }>;
