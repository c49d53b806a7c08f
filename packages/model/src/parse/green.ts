import type { Green } from '../hole.ts';
import { toMillimetre } from '../millimetre.ts';
import { isFields } from './fields.ts';
import { LIMITS } from './limits.ts';
import { parseNumber } from './number.ts';
import { parsePoint, parseRing } from './point.ts';

/** A green without its place: it keeps its size, lie and outline when it is moved. */
export type GreenShape = Omit<Green, 'centre'>;

/** Size and lie of a putting surface; an outline that cannot be read leaves the oval. */
export function parseGreenShape(value: unknown): GreenShape | undefined {
  if (!isFields(value)) return undefined;
  const length = parseNumber(value.length, 1, LIMITS.greenSize);
  const width = parseNumber(value.width, 1, LIMITS.greenSize);
  const bearing = parseNumber(value.bearing, -7, 7);
  if (length === undefined || width === undefined || bearing === undefined) return undefined;
  const outline = value.outline === undefined ? undefined : parseRing(value.outline);
  return { length: toMillimetre(length), width: toMillimetre(width), bearing, ...(outline && { outline }) };
}

/** A putting surface: its centre, size and lie. */
export function parseGreen(value: unknown): Green | undefined {
  if (!isFields(value)) return undefined;
  const centre = parsePoint(value.centre);
  const shape = parseGreenShape(value);
  return centre && shape ? { centre, ...shape } : undefined;
}
