import type { NamedEdit, OutlineOf } from '@loopwright/document';
import { plus } from '@loopwright/geometry';
import { pointToMillimetre, type SitePoint } from '@loopwright/model';
import { dragGesture, type Moving } from '../drag-gesture.ts';
import type { Hand, PointerAt, SnapBeside, Tool } from '../tool.ts';
import type { LandGrip } from './land-grips.ts';
import { thingMover, vertexMover } from './move-thing.ts';
import { outlineNow, thingOf } from './outlines-of.ts';
import { refusedOutline } from './refused-outline.ts';

/**
 * Takes hold of a vertex, of the middle of an edge (a new vertex), or of the whole outline. A press picks a vertex out;
 * with Alt it takes it out.
 */
export const dragLandGrip: Tool = {
  name: 'drag land grip',
  begin: (hit, at, hand) => {
    if (hit?.kind !== 'vertex' && hit?.kind !== 'edge' && hit?.kind !== 'whole') return undefined;
    const moving = movingOf(hit, hand);
    return moving && dragGesture(moving, at, hand);
  },
};

function movingOf(grip: LandGrip, hand: Hand): Moving | undefined {
  const { site } = hand;
  const { outline } = grip;
  const thing = thingOf(outline);
  const base = { of: 'site', holds: [], refused: (edit: NamedEdit) => refusedOutline(site, edit) } as const;
  const pickOut = (at: SitePoint) => hand.select({ thing, vertex: { outline, at } });
  if (grip.kind === 'vertex') {
    const mover = vertexMover(site, grip);
    const beside = neighboursOf(hand, outline, grip.at);
    return (
      mover && {
        ...base,
        editFor: (way, now) => ({ ...mover(way), to: landed(plus(grip.at, way), now, beside, hand) }),
        dropped: (edit) => edit.edit === 'move vertex' && pickOut(edit.to),
        click: ({ alt }) => (alt ? removeVertex(hand, grip) : pickOut(grip.at)),
      }
    );
  }
  if (grip.kind === 'edge') {
    const { after } = grip;
    const beside = { ...neighboursOf(hand, outline, after), from: after };
    return {
      ...base,
      editFor: (way, now) => ({
        edit: 'add vertex',
        outline,
        after,
        at: landed(plus(grip.at, way), now, beside, hand),
      }),
      dropped: (edit) => edit.edit === 'add vertex' && pickOut(edit.at),
      click: () => hand.say('Drag from the middle of an edge to put a vertex there.'),
    };
  }
  return wholeMoving(outline, hand, base);
}

/** The outer outline moves the thing with all it has; an inner one, or one of several, moves alone. */
function wholeMoving(outline: OutlineOf, hand: Hand, base: Pick<Moving, 'of' | 'holds'>): Moving | undefined {
  const isAlone = outline.of === 'boundary' && (hand.site.boundary?.outlines.length ?? 0) === 1;
  const whole = isAlone && outline.part === 'outlines' ? thingMover(hand.site, { kind: 'boundary' }) : undefined;
  if (!outlineNow(hand.site, outline)) return undefined;
  return {
    ...base,
    editFor: whole ?? ((way) => ({ edit: 'move outline', outline, by: pointToMillimetre(way) })),
    click: () => hand.say('Drag here to move all of it.'),
  };
}

/** Where a vertex comes to lie: drawn to what is near, unless Alt is held. */
function landed(at: SitePoint, now: PointerAt, beside: SnapBeside, hand: Hand): SitePoint {
  return pointToMillimetre(now.alt ? at : hand.snap(at, beside));
}

/** What a vertex is snapped beside: square to the edge that leads to it, not to the outline's own line. */
function neighboursOf(hand: Hand, outline: OutlineOf, at: SitePoint): SnapBeside {
  const thing = thingOf(outline);
  const without = 'id' in thing ? thing.id : thing.kind;
  const now = outlineNow(hand.site, outline);
  const place = now?.points.findIndex(({ x, y }) => x === at.x && y === at.y) ?? -1;
  if (!now || place < 0) return { without };
  const count = now.points.length;
  const back = (steps: number) => now.points[now.isClosed ? (place - steps + count) % count : place - steps];
  const [from, before] = [back(1), back(2)];
  return { without, ...(from ? { from } : {}), ...(before ? { before } : {}) };
}

/** Takes a vertex out; an outline that would be none any more keeps it, and says so. */
export function removeVertex(
  hand: Hand,
  { outline, at }: { readonly outline: OutlineOf; readonly at: SitePoint },
): void {
  const edit = { edit: 'remove vertex', outline, at } as const;
  const why = refusedOutline(hand.site, edit);
  if (why === undefined) hand.edit(edit);
  else hand.say(why);
  if (why === undefined && hand.selection.vertex) hand.select({ thing: thingOf(outline) });
}
