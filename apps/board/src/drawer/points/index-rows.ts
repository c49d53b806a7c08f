import type { NamedEdit } from '@loopwright/document';
import type { SitePoint } from '@loopwright/model';

/** One thing of the canvas as the table lists it: what it is, its key facts, where it lies, and how it is moved. */
export interface IndexRow {
  readonly key: string;
  readonly title: string;
  readonly facts: string;
  /** Its place, or its middle; absent where it has no single place. */
  readonly at?: SitePoint;
  /** The edit that puts its place there; absent where it is not moved by itself. */
  readonly moved?: (to: SitePoint) => NamedEdit;
  /** Rows that belong to it, e.g. the waypoints of a walk. */
  readonly under?: readonly IndexRow[];
}

/** '120.5 east, 40.0 north'. */
export function placeWords({ x, y }: SitePoint): string {
  return `${x.toFixed(1)} east, ${y.toFixed(1)} north`;
}
