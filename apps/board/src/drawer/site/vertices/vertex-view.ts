import type { NamedEdit, OutlineOf } from '@loopwright/document';
import { minus, plus, pointBetween } from '@loopwright/geometry';
import { pointToMillimetre, type Site, type SitePoint } from '@loopwright/model';
import type { DrawerProps, Selection } from '../../../board/parts.ts';
import { type OutlineShown, sameOutline } from '../../../tools/land/outlines-of.ts';
import { refusedOutline } from '../../../tools/land/refused-outline.ts';
import { coordinateAnswer, type TypedAnswer } from '../../typed/typed-answer.ts';

/** What a table of vertices and each of its rows is given. */
export interface VerticesProps extends Pick<DrawerProps, 'selection' | 'select' | 'goTo' | 'edit' | 'say'> {
  readonly site: Site;
  readonly shown: OutlineShown;
}

/** Whether that vertex is the one picked out. */
export function isVertex(vertex: Selection['vertex'], outline: OutlineOf, at: SitePoint): boolean {
  return vertex !== undefined && sameOutline(vertex.outline, outline) && vertex.at.x === at.x && vertex.at.y === at.y;
}

/** Rows of vertices shown at a time: five hundred fields at once would be slow to open. */
export const PAGE = 40;

/** The page that shows a vertex. */
export const pageOf = (index: number): number => Math.floor(index / PAGE);

/** A typed coordinate of a vertex, as an edit; an outline that would cross itself keeps the old one. */
export function vertexAnswer(
  site: Site,
  { outline }: OutlineShown,
  at: SitePoint,
  axis: 'x' | 'y',
  typed: string,
): TypedAnswer {
  const answer = coordinateAnswer(typed, at[axis], (to) => ({
    edit: 'move vertex',
    outline,
    from: at,
    to: { ...at, [axis]: to },
  }));
  const why = answer.kind === 'edit' ? refusedOutline(site, answer.edit) : undefined;
  return why === undefined ? answer : { kind: 'wrong', why };
}

/** A new vertex in the middle of the edge behind this one; behind the end of a line, as far on as it came. */
export function addAfter(shown: OutlineShown, index: number): Extract<NamedEdit, { edit: 'add vertex' }> | undefined {
  const { outline, points, isClosed } = shown;
  const after = points[index];
  if (!after) return undefined;
  const next = points[index + 1] ?? (isClosed ? points[0] : undefined);
  const before = points[index - 1];
  const at = next ? pointBetween(after, next, 0.5) : before && plus(after, minus(after, before));
  return at && { edit: 'add vertex', outline, after, at: pointToMillimetre(at) };
}
