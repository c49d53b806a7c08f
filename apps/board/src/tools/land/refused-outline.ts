import type { NamedEdit } from '@loopwright/document';
import { ringIsSimple } from '@loopwright/geometry';
import { LIMITS, type Ring, type Site, type SitePoint } from '@loopwright/model';
import { type OutlineShown, outlineNow } from './outlines-of.ts';

const CROSSES = 'That outline would cross or touch itself: it was put back.';

/**
 * Why a change of a vertex is not made, in words; `undefined` when it can be. An outline that crossed itself already,
 * e.g. an imported one, may be mended step by step.
 *
 * @param site  as it is without the change
 */
export function refusedOutline(site: Site, edit: NamedEdit): string | undefined {
  if (edit.edit !== 'move vertex' && edit.edit !== 'add vertex' && edit.edit !== 'remove vertex') return undefined;
  const now = outlineNow(site, edit.outline);
  if (!now || now.points.length === 1) return undefined;
  const after = withoutTwins(changed(now, edit), now.isClosed);
  if (after.length < (now.isClosed ? 3 : 2)) {
    return now.isClosed ? 'An outline keeps three corners.' : 'A line keeps two points.';
  }
  const most = now.isClosed ? LIMITS.ringPoints : LIMITS.linePoints;
  if (after.length > most) return `${most} points are the most one outline takes: take one out first.`;
  return now.isClosed && ringIsSimple(now.points) && !ringIsSimple(after) ? CROSSES : undefined;
}

type VertexEdit = Extract<NamedEdit, { edit: 'move vertex' | 'add vertex' | 'remove vertex' }>;

function changed({ points }: OutlineShown, edit: VertexEdit): Ring {
  if (edit.edit === 'remove vertex') return points.filter((point) => !isAt(point, edit.at));
  if (edit.edit === 'move vertex') return points.map((point) => (isAt(point, edit.from) ? edit.to : point));
  return points.flatMap((point) => (isAt(point, edit.after) ? [point, edit.at] : [point]));
}

/** A vertex put on the one beside it becomes one with it. */
const withoutTwins = (points: Ring, isClosed: boolean): Ring =>
  points.filter((point, place) => {
    const next = points[place + 1] ?? (isClosed ? points[0] : undefined);
    return !next || !isAt(point, next);
  });

const isAt = (one: SitePoint, other: SitePoint) => one.x === other.x && one.y === other.y;
