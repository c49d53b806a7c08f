import { type Feature, type Hole, holeOf, type Routing, type Site, type SitePoint } from '@loopwright/model';

/** The holes of a routing, as they lay, that lie elsewhere now or are no longer on the plan. */
export function holesMovedSince(then: Routing, now: Routing): readonly Hole[] {
  return then.holes.filter((was) => {
    if (was.seat.in === 'removed') return false;
    const is = holeOf(now, was.id);
    return !is || is.seat.in === 'removed' || !liesAlike(was, is);
  });
}

function liesAlike(was: Hole, is: Hole): boolean {
  return (
    was === is ||
    (isSame(was.tees, is.tees) &&
      isSame(
        was.turnPoints.map(({ at }) => at),
        is.turnPoints.map(({ at }) => at),
      ) &&
      isSame(was.green, is.green))
  );
}

/** The outline of a thing on the site as it lay. */
export interface SiteGhost {
  readonly key: string;
  /** One point of a thing without extent. */
  readonly points: readonly SitePoint[];
  readonly closed: boolean;
}

/** The boundary, bases, marks and features that lie elsewhere now or are gone, as they lay. */
export function siteMovedSince(then: Site, now: Site): readonly SiteGhost[] {
  const moved = <Thing extends { readonly id: string }>(
    was: readonly Thing[],
    is: readonly Thing[],
    shape: (thing: Thing) => unknown,
  ) => {
    if (was === is) return [];
    const byId = new Map(is.map((thing) => [thing.id, thing]));
    return was.filter((thing) => {
      const other = byId.get(thing.id);
      return !other || (other !== thing && !isSame(shape(thing), shape(other)));
    });
  };
  return [
    ...(isSame(then.boundary, now.boundary) ? [] : boundaryGhosts(then)),
    ...moved(then.features, now.features, ({ geometry }) => geometry).flatMap(featureGhosts),
    ...moved(then.bases, now.bases, ({ apron, footprints }) => [apron, footprints]).flatMap(
      ({ id, apron, footprints }) => [
        { key: `base ${id}`, points: [apron], closed: false },
        ...footprints.map((points, ring) => ({ key: `base ${id} ${ring}`, points, closed: true })),
      ],
    ),
    ...moved(then.marks, now.marks, ({ at }) => at).map(({ id, at }) => ({
      key: `mark ${id}`,
      points: [at],
      closed: false,
    })),
  ];
}

function boundaryGhosts({ boundary }: Site): readonly SiteGhost[] {
  const rings = boundary ? [...boundary.outlines, ...boundary.inner] : [];
  return rings.map((points, ring) => ({ key: `boundary ${ring}`, points, closed: true }));
}

function featureGhosts({ id, geometry }: Feature): readonly SiteGhost[] {
  const key = `feature ${id}`;
  if (geometry.type === 'point') return [{ key, points: [geometry.at], closed: false }];
  if (geometry.type === 'line') return [{ key, points: geometry.points, closed: false }];
  return geometry.rings.map((points, ring) => ({ key: `${key} ${ring}`, points, closed: true }));
}

/** Whether two plain values say the same; fields of points come in any order. */
function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const [first, second] = [Object.entries(one), new Map(Object.entries(other))];
  return (
    first.length === second.size && first.every(([key, value]) => second.has(key) && isSame(value, second.get(key)))
  );
}
