import type { WalkCrossing, WalkFigures } from '@loopwright/analysis';
import { pointAlong, polylineLength } from '@loopwright/geometry';
import { type HoleId, holeOf, pointToMillimetre, type Routing, type SitePoint } from '@loopwright/model';
import type { Names } from '../../reading/names.ts';
import { endsOf } from '../../round/thread-view.ts';
import type { IndexRow } from './index-rows.ts';

/** A walk as the table lists it, and the hole whose sheet says how it is led. */
export interface WalkRow extends IndexRow {
  readonly hole: HoleId;
}

/** The walks of the routing in playing order: length, what they cross, and the waypoints they are led by. */
export function walkRows(walks: readonly WalkFigures[], routing: Routing, names: Names): readonly WalkRow[] {
  return walks.flatMap((walk) => {
    const hole = 'hole' in walk.from ? walk.from.hole : 'hole' in walk.to ? walk.to.hole : undefined;
    if (hole === undefined) return [];
    const [from, to] = endsOf(walk, names);
    const led = 'hole' in walk.from ? waypointRows(routing, walk.from.hole) : [];
    const facts = [names.length(walk.distance), ...walk.crossings.map((crossing) => crossingWords(crossing, names))];
    if (walk.walkBack > 0) facts.push(`${names.length(walk.walkBack)} of it back`);
    return [
      {
        key: walk.key,
        hole,
        title: `Walk from ${from} to ${to}`,
        facts: facts.join('; '),
        at: pointAlong(walk.path, polylineLength(walk.path) / 2),
        under: led,
      },
    ];
  });
}

/** 'crosses hole 7 ahead of the tee', 'crosses Shore Road'. */
function crossingWords({ what }: WalkCrossing, names: Names): string {
  if (what.kind === 'feature') return `crosses ${names.feature(what.feature)}`;
  return `crosses the line of hole ${names.number(what.hole)} ${what.where}`;
}

function waypointRows(routing: Routing, id: HoleId): readonly IndexRow[] {
  const waypoints: readonly SitePoint[] = holeOf(routing, id)?.waypoints ?? [];
  return waypoints.map((at, index) => ({
    key: `${id} ${index}`,
    title: `waypoint ${index + 1}`,
    facts: '',
    at,
    ...(routing.locked
      ? {}
      : {
          moved: (to) => ({
            edit: 'set waypoints',
            routing: routing.id,
            hole: id,
            waypoints: waypoints.with(index, pointToMillimetre(to)),
          }),
        }),
  }));
}
