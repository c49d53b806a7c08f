import type { NamedEdit } from '@loopwright/document';
import { bearingOf, dot, plus } from '@loopwright/geometry';
import { type Hole, holeOf, pointToMillimetre, type SitePoint, toMillimetre } from '@loopwright/model';
import { dragGesture, type Moving } from './drag-gesture.ts';
import { shapeOf, sized, turned } from './green-shapes.ts';
import type { Grip } from './grip.ts';
import { partsInPlay } from './nudge.ts';
import { type Hand, picksFurther, type Tool } from './tool.ts';

/** Takes hold of a grip of the hole picked out: bends, lengthens, shapes its green, or leads its walk. */
export const dragGrip: Tool = {
  name: 'drag grip',
  begin: (hit, at, hand) => {
    if (hit?.kind !== 'grip' || picksFurther(at)) return undefined;
    const hole = holeOf(hand.routing, hit.hole);
    return hole && dragGesture(movingGrip(hole, hit.grip, hand), at, hand);
  },
};

/** What dragging a grip does. The hole stays picked out; a press alone changes nothing, but Alt takes a waypoint out. */
function movingGrip(hole: Hole, grip: Grip, hand: Hand): Moving {
  const of = { routing: hand.routing.id, hole: hole.id };
  const moving = (
    editFor: (way: SitePoint) => NamedEdit | undefined,
    parts: Moving['holds'][number]['parts'] = [],
  ): Moving => ({ holds: [{ hole: hole.id, parts }], editFor, click: () => undefined });
  switch (grip.kind) {
    case 'leg': {
      const turn = hand.freshId('t');
      const { at, place } = grip;
      return moving((way) => ({ ...of, edit: 'add turn point', turn, at: pointToMillimetre(plus(at, way)), place }));
    }
    case 'beyond': {
      const { end, out } = grip;
      return moving(
        (way) => {
          const by = toMillimetre(dot(way, out));
          return by === 0 ? undefined : { ...of, edit: 'lengthen', end, by };
        },
        partsInPlay(hole).filter((part) => part === end),
      );
    }
    case 'waypoint':
    case 'walk leg':
      return {
        ...moving((way) => ({ ...of, edit: 'set waypoints', waypoints: waypointsWith(hole, grip, way) })),
        click: ({ alt }) => {
          if (alt && grip.kind === 'waypoint') takeOutWaypoint(hand, hole, grip.index);
        },
      };
    default:
      return moving(
        (way) => {
          const shape = hole.green && shapedBy(hole.green, grip, way);
          return shape && { ...of, edit: 'shape green', shape };
        },
        ['green'],
      );
  }
}

function waypointsWith(hole: Hole, grip: Extract<Grip, { readonly index: number }>, way: SitePoint) {
  const at = pointToMillimetre(plus(grip.at, way));
  return hole.waypoints.toSpliced(grip.index, grip.kind === 'waypoint' ? 1 : 0, at);
}

/** A handle drags the edge it lies on; both edges go with it, since the centre stays. */
function shapedBy(green: NonNullable<Hole['green']>, grip: Grip, way: SitePoint) {
  const shape = shapeOf(green);
  if (grip.kind === 'green length') return sized(shape, { length: green.length + 2 * dot(way, grip.out) });
  if (grip.kind === 'green width') return sized(shape, { width: green.width + 2 * dot(way, grip.out) });
  if (grip.kind !== 'green bearing') return undefined;
  const [was, is] = [minusCentre(green, grip.at), minusCentre(green, plus(grip.at, way))];
  if (is.x === 0 && is.y === 0) return undefined;
  return turned(shape, green.bearing + bearingOf(is) - bearingOf(was));
}

const minusCentre = ({ centre }: NonNullable<Hole['green']>, at: SitePoint): SitePoint => ({
  x: at.x - centre.x,
  y: at.y - centre.y,
});

/** Takes a waypoint out; a locked routing says so. */
export function takeOutWaypoint(hand: Hand, hole: Hole, index: number): void {
  const { routing } = hand;
  if (routing.locked) hand.sayLocked();
  else {
    const waypoints = hole.waypoints.toSpliced(index, 1);
    hand.edit({ edit: 'set waypoints', routing: routing.id, hole: hole.id, waypoints });
  }
}
