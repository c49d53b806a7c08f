import { bearingOf, closestOnPolyline, distanceBetween, distanceToRing, minus } from '@loopwright/geometry';
import type { FeatureGeometry, SitePoint } from '@loopwright/model';
import type { Consequences } from '../board/parts.ts';
import { compassWord } from '../reading/directions.ts';
import type { Names } from '../reading/names.ts';

interface Known {
  readonly words: string;
  readonly at: SitePoint;
}

/** Where a place lies, seen from the nearest thing with a name: '34 yd east of green 4'. */
export function whereWords(
  { plan, routing }: Pick<Consequences, 'plan' | 'routing'>,
  names: Names,
  at: SitePoint,
): string {
  const holes = routing.holes
    .filter(({ seat }) => seat.in !== 'removed')
    .flatMap(({ id, tees, turnPoints, green }): Known[] => [
      ...Object.values(tees).map((tee) => ({ words: `tee ${names.number(id)}`, at: tee })),
      ...turnPoints.map((turn) => ({ words: `the turn of ${names.number(id)}`, at: turn.at })),
      ...(green ? [{ words: `green ${names.number(id)}`, at: green.centre }] : []),
    ]);
  const { bases, marks, features, boundary } = plan.site;
  const things: Known[] = [
    ...holes,
    ...bases.map(({ name, apron }) => ({ words: name, at: apron })),
    ...marks.map((mark) => ({ words: `the ${mark.kind}`, at: mark.at })),
    ...features.flatMap(({ id, geometry }) => {
      const near = nearestOf(geometry, at);
      return near ? [{ words: names.feature(id), at: near }] : [];
    }),
    ...(boundary?.outlines ?? [])
      .filter(({ length }) => length > 0)
      .map((ring) => ({ words: 'the boundary', at: distanceToRing(at, ring).point })),
  ];
  const nearest = things
    .map((thing) => ({ thing, distance: distanceBetween(thing.at, at) }))
    .reduce<{ readonly thing: Known; readonly distance: number } | undefined>(
      (best, next) => (best && best.distance <= next.distance ? best : next),
      undefined,
    );
  if (!nearest) return `${Math.round(at.x)} m east, ${Math.round(at.y)} m north`;
  if (nearest.distance < 1) return `at ${nearest.thing.words}`;
  const way = compassWord(bearingOf(minus(at, nearest.thing.at)));
  return `${names.length(nearest.distance)} ${way} of ${nearest.thing.words}`;
}

function nearestOf(geometry: FeatureGeometry, at: SitePoint): SitePoint | undefined {
  if (geometry.type === 'point') return geometry.at;
  const [outline] = geometry.type === 'area' ? geometry.rings : [];
  if (geometry.type === 'area') return outline && outline.length > 0 ? distanceToRing(at, outline).point : undefined;
  return geometry.points.length > 0 ? closestOnPolyline(at, geometry.points).point : undefined;
}
