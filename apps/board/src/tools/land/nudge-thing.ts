import type { NamedEdit } from '@loopwright/document';
import type { Site } from '@loopwright/model';
import type { Selection, SiteThing } from '../../board/parts.ts';
import type { Nudging } from '../nudge.ts';
import { thingMover, vertexMover } from './move-thing.ts';
import { outlinesOf, sameOutline, thingOf } from './outlines-of.ts';
import { refusedOutline } from './refused-outline.ts';

/** What the arrow keys move on the land: the vertex picked out, else the whole thing; `undefined` when neither is there. */
export function nudgeThing(site: Site, { thing, vertex }: Selection): Nudging | undefined {
  if (!thing) return undefined;
  const editFor = (vertex && vertexMover(site, vertex)) ?? thingMover(site, thing);
  return editFor && { of: 'site', holds: [], editFor };
}

/** The vertex to be picked out after this one; after the last, the whole thing. */
export function nextVertex(site: Site, thing: SiteThing, now: Selection['vertex']): Selection['vertex'] {
  const all = outlinesOf(site, thing).flatMap(({ outline, points }) => points.map((at) => ({ outline, at })));
  if (!now) return all[0];
  const place = all.findIndex(
    ({ outline, at }) => sameOutline(outline, now.outline) && at.x === now.at.x && at.y === now.at.y,
  );
  return all[place + 1];
}

/** What Delete takes away on the land, and what is picked out afterwards; words where nothing is. */
export type TakenAway =
  | { readonly kind: 'edit'; readonly edit: NamedEdit; readonly select: Selection }
  | { readonly kind: 'refused'; readonly words: string };

/** The vertex picked out, else the whole thing. Undo brings either back. */
export function takenAway(site: Site, { thing, vertex }: Selection): TakenAway | undefined {
  if (!thing) return undefined;
  if (vertex) {
    const edit = { edit: 'remove vertex', outline: vertex.outline, at: vertex.at } as const;
    const words = refusedOutline(site, edit);
    return words === undefined
      ? { kind: 'edit', edit, select: { thing: thingOf(vertex.outline) } }
      : { kind: 'refused', words };
  }
  return { kind: 'edit', edit: removeThing(thing), select: {} };
}

/** Takes a thing off the site. */
export function removeThing(thing: SiteThing): NamedEdit {
  switch (thing.kind) {
    case 'boundary':
      return { edit: 'draw boundary', boundary: null };
    case 'base':
      return { edit: 'remove base', base: thing.id };
    case 'feature':
      return { edit: 'remove features', features: [thing.id] };
    case 'mark':
      return { edit: 'remove mark', mark: thing.id };
    case 'image':
      return { edit: 'remove image', image: thing.id };
    case 'sketch':
      return { edit: 'wipe sketches', sketches: [thing.id] };
  }
}
