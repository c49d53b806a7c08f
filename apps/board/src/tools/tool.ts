import type { NamedEdit } from '@loopwright/document';
import type { CanvasPoint, HoleId, PartId, Routing, SitePoint } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';
import type { Hit, PointerKind } from './hit.ts';

/** The pointer, in both spaces. */
export interface PointerAt {
  readonly canvas: CanvasPoint;
  readonly site: SitePoint;
  readonly kind: PointerKind;
}

/** What a tool may do; it knows neither document nor canvas. */
export interface Hand {
  readonly routing: Routing;
  /** Shows everybody what this edit would do. */
  drag(edit: NamedEdit): void;
  /** Writes what was shown last. */
  drop(): void;
  /** Leaves the plan as it was. */
  letGo(): void;
  select(selection: Selection): void;
  pan(by: CanvasPoint): void;
  /** A pinned part was taken hold of: asks before it moves. */
  askAboutPin(hole: HoleId, parts: readonly PartId[]): void;
  /** A locked routing was taken hold of. */
  sayLocked(): void;
}

/** A press that goes on until the pointer is let go, taken away, or Esc is pressed. */
export interface Gesture {
  /** What the pointer looks like meanwhile. */
  readonly cursor: string;
  move(at: PointerAt): void;
  end(at: PointerAt): void;
  cancel(): void;
}

/** A way of taking hold: answers `undefined` where it has nothing to take hold of. */
export interface Tool {
  readonly name: string;
  begin(hit: Hit | undefined, at: PointerAt, hand: Hand): Gesture | undefined;
}

/** Pixels the pointer travels before a press becomes a drag: a click must not move a tee. */
export const SLACK: Readonly<Record<PointerKind, number>> = { mouse: 3, pen: 5, touch: 8 };

export function hasTravelled(from: PointerAt, to: PointerAt): boolean {
  const [dx, dy] = [to.canvas.x - from.canvas.x, to.canvas.y - from.canvas.y];
  return dx * dx + dy * dy > SLACK[from.kind] ** 2;
}
