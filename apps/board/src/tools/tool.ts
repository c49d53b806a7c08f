import type { NamedEdit } from '@loopwright/document';
import type { CanvasPoint, HoleId, PartId, Routing, Site, SitePoint } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';
import type { Hit, PointerKind } from './hit.ts';

/** The pointer, in both spaces. */
export interface PointerAt {
  readonly canvas: CanvasPoint;
  readonly site: SitePoint;
  readonly kind: PointerKind;
  /** Shift is held: on paper it frames, on a hole it picks out one more. */
  readonly shift?: true;
  /** Ctrl or Cmd is held: picks out one more or one less. */
  readonly adds?: true;
  readonly alt?: true;
}

/** Parts of one hole that an edit would move. */
export interface HeldParts {
  readonly hole: HoleId;
  readonly parts: readonly PartId[];
}

/** What a vertex is snapped beside. */
export interface SnapBeside {
  /** The id of a thing that does not pull, e.g. the feature whose own vertex is moved; 'boundary' for the boundary. */
  readonly without?: string;
  /** The vertex before it, and the one before that. */
  readonly from?: SitePoint;
  readonly before?: SitePoint;
}

/** What a tool may do; it knows neither document nor canvas. */
export interface Hand {
  readonly routing: Routing;
  /** The land as the press begins. */
  readonly site: Site;
  /** What is picked out as the press begins. */
  readonly selection: Selection;
  /** A fresh id with that first letter. */
  freshId(letter: string): string;
  /** Draws a vertex to guides nearby; as it is while snapping is off. */
  snap(at: SitePoint, beside: SnapBeside): SitePoint;
  /** Shows everybody what this edit would do. */
  drag(edit: NamedEdit): void;
  /** Writes what was shown last. */
  drop(): void;
  /** Leaves the plan as it was. */
  letGo(): void;
  /** Writes an edit that was not shown before. */
  edit(edit: NamedEdit): void;
  select(selection: Selection): void;
  pan(by: CanvasPoint): void;
  /** Shows a frame being drawn between two corners; `undefined` takes it away. */
  frame(corners: readonly [SitePoint, SitePoint] | undefined): void;
  /** The holes that lie in a frame, in playing order. */
  holesIn(corners: readonly [SitePoint, SitePoint]): readonly HoleId[];
  /** Pinned parts were taken hold of, of one hole or further ones: asks before they move. */
  askAboutPin(hole: HoleId, parts: readonly PartId[], further?: readonly HeldParts[]): void;
  /** A locked routing was taken hold of. */
  sayLocked(): void;
  /** Says something at the foot of the drawing, and to those who listen. */
  say(words: string): void;
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

/** Whether the press picks out one more or one less instead of something else. */
export const picksFurther = ({ shift, adds }: PointerAt): boolean => shift === true || adds === true;
