import type { HoleFigures, ShotFan } from '@loopwright/analysis';
import { bearingOf, minus, pointAlong, polylineLength } from '@loopwright/geometry';
import type { Hole, HoleId, PartId, SitePoint, TeeSetId } from '@loopwright/model';
import { toSheetLine, turnDegrees } from './site-transform.ts';

/** A tee as a rectangle across its line of play. */
export interface TeeView {
  readonly part: PartId;
  readonly teeSet: TeeSetId;
  readonly at: SitePoint;
  /** Degrees clockwise, of the line of play from it. */
  readonly turn: number;
  /** Ours, not the designer's: drawn dashed. */
  readonly proposed: boolean;
}

export interface TurnView {
  readonly part: PartId;
  readonly at: SitePoint;
}

/** A hole as the drawing shows it, in sheet units; made once for as long as the hole and its figures stay. */
export interface HoleView {
  readonly id: HoleId;
  /** Its number in the round; a spare hole has none and goes by its place in the tray: 'S2'. */
  readonly label: string;
  readonly spare: boolean;
  readonly centreline: readonly SitePoint[];
  readonly line: readonly number[];
  readonly corridor: readonly number[];
  readonly tees: readonly TeeView[];
  readonly turns: readonly TurnView[];
  readonly green?: { readonly at: SitePoint; readonly outline: readonly number[]; readonly reach: number };
  /** Where the number may stand, best first: along the line, clear of tee and green. */
  readonly numberPlaces: readonly SitePoint[];
  /** Nothing but a tee or a green: shown, and said to be incomplete. */
  readonly missing?: 'tee' | 'green';
  readonly pinned: readonly PartId[];
  readonly fans: readonly ShotFan[];
}

/** Corners of an oval; even, so that both ends of each axis are on it. */
const OVAL_CORNERS = 32;
/** Shares of the line where a number may stand, best first. */
const NUMBER_SHARES = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74];

/** The outline of a green on the site: its own, or the oval of its length and width. */
export function greenOutline(green: NonNullable<Hole['green']>): readonly SitePoint[] {
  const { centre } = green;
  if (green.outline) return green.outline.map((p) => ({ x: centre.x + p.x, y: centre.y + p.y }));
  const [sine, cosine] = [Math.sin(green.bearing), Math.cos(green.bearing)];
  return Array.from({ length: OVAL_CORNERS }, (_, corner) => {
    const angle = (corner / OVAL_CORNERS) * 2 * Math.PI;
    const along = (Math.cos(angle) * green.length) / 2;
    const across = (Math.sin(angle) * green.width) / 2;
    return { x: centre.x + along * sine + across * cosine, y: centre.y + along * cosine - across * sine };
  });
}

/** What the drawing shows of a hole. */
export function toHoleView(hole: Hole, figures: HoleFigures, label: string): HoleView {
  const next = hole.turnPoints[0]?.at ?? hole.green?.centre;
  const { centreline } = figures;
  return {
    id: hole.id,
    label,
    spare: hole.seat.in === 'spare',
    centreline,
    line: toSheetLine(centreline),
    corridor: toSheetLine(figures.corridor),
    tees: figures.tees.map((tee) => ({
      part: `tee:${tee.teeSet}`,
      teeSet: tee.teeSet,
      at: tee.at,
      turn: next ? turnDegrees(bearingOf(minus(next, tee.at))) : 0,
      proposed: tee.proposed,
    })),
    turns: hole.turnPoints.map((turn) => ({ part: `turn:${turn.id}`, at: turn.at })),
    ...(hole.green ? { green: toGreenView(hole.green) } : {}),
    numberPlaces: numberPlacesOn(centreline, hole),
    ...(figures.missing ? { missing: figures.missing } : {}),
    pinned: hole.pinned,
    fans: figures.fans,
  };
}

function toGreenView(green: NonNullable<Hole['green']>) {
  return {
    at: green.centre,
    outline: toSheetLine(greenOutline(green)),
    reach: Math.max(green.length, green.width) / 2,
  };
}

function numberPlacesOn(centreline: readonly SitePoint[], hole: Hole): readonly SitePoint[] {
  if (centreline.length < 2) {
    const only = centreline[0] ?? hole.green?.centre ?? Object.values(hole.tees)[0];
    return only ? [only] : [];
  }
  const length = polylineLength(centreline);
  return NUMBER_SHARES.map((share) => pointAlong(centreline, length * share));
}
