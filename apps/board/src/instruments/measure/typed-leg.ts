import type { SitePoint } from '@loopwright/model';

/** What may be typed while a line is laid from point to point. */
export type TypedLeg =
  /** Coordinates in metres: '120.5, -40'. */
  | { readonly kind: 'place'; readonly at: SitePoint }
  /** In the reader's unit, with a bearing in radians where one was typed: '120' or '120 @ 45'. */
  | { readonly kind: 'leg'; readonly length: number; readonly bearing?: number };

const NUMBER = '-?\\d+(?:\\.\\d+)?';
const PLACE = new RegExp(`^(${NUMBER})\\s*[,;]\\s*(${NUMBER})$`);
const LEG = new RegExp(`^(${NUMBER})(?:\\s*@\\s*(${NUMBER})°?)?$`);
/** Metres or yards beyond which no plan goes, and degrees beyond which nobody means a bearing. */
const FURTHEST = 1_000_000;
const MOST_DEGREES = 360;

/** Reads a typed leg; `undefined` for anything else. */
export function parseTypedLeg(typed: string): TypedLeg | undefined {
  const words = typed.trim().slice(0, 60);
  const place = PLACE.exec(words);
  if (place) {
    const at = { x: Number(place[1]), y: Number(place[2]) };
    return Math.abs(at.x) <= FURTHEST && Math.abs(at.y) <= FURTHEST ? { kind: 'place', at } : undefined;
  }
  const leg = LEG.exec(words);
  const length = Number(leg?.[1]);
  if (!leg || !(length > 0) || length > FURTHEST) return undefined;
  if (leg[2] === undefined) return { kind: 'leg', length };
  const degrees = Number(leg[2]);
  return Math.abs(degrees) <= MOST_DEGREES ? { kind: 'leg', length, bearing: (degrees * Math.PI) / 180 } : undefined;
}
