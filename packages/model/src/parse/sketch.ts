import { isId } from '../ids.ts';
import { toMillimetre } from '../millimetre.ts';
import type { RingCentre, Sketch, SketchShape } from '../sketch.ts';
import { isFields } from './fields.ts';
import { parsePart } from './hole-parts.ts';
import { LIMITS } from './limits.ts';
import { parseNumber } from './number.ts';
import { parsePoint, parsePoints, parseRing } from './point.ts';
import { parseLines, parseName } from './text.ts';

/** What a clearance ring is drawn about: a place, or a part of a hole, whether or not that hole is still there. */
function parseRingCentre(value: unknown): RingCentre | undefined {
  if (!isFields(value)) return undefined;
  const part = parsePart(value.part);
  if (isId(value.routing) && isId(value.hole) && part) return { routing: value.routing, hole: value.hole, part };
  const at = parsePoint(value.at);
  return at && { at };
}

/** A line of at least two points, an outline, or a ring with a radius. */
export function parseSketchShape(value: unknown): SketchShape | undefined {
  if (!isFields(value)) return undefined;
  const { kind } = value;
  if (kind === 'stroke' || kind === 'measured line' || kind === 'rod') {
    const points = parsePoints(value.points, LIMITS.sketchPoints);
    return points && points.length >= 2 ? { kind, points } : undefined;
  }
  if (kind === 'measured area') {
    const ring = parseRing(value.ring);
    return ring && { kind, ring };
  }
  if (kind !== 'ring') return undefined;
  const radius = parseNumber(value.radius, LIMITS.leastRingRadius, LIMITS.ringRadius);
  const about = parseRingCentre(value.about);
  return radius !== undefined && about ? { kind, radius: toMillimetre(radius), about } : undefined;
}

/** The number of an ink. */
export function parseInk(value: unknown): number | undefined {
  const ink = parseNumber(value, 0, LIMITS.inks - 1);
  return ink !== undefined && Number.isInteger(ink) ? ink : undefined;
}

/** Something drawn beside the plan. Who drew it is what they called themselves; it grants nothing. */
export function parseSketch(value: unknown): Sketch | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  const shape = parseSketchShape(value.shape);
  if (shape === undefined) return undefined;
  const note = parseLines(value.note, LIMITS.note);
  return {
    id: value.id,
    shape,
    by: parseName(value.by, LIMITS.name) ?? 'somebody',
    ink: parseInk(value.ink) ?? 0,
    kept: value.kept === true,
    ...(note && { note }),
  };
}
