import { plus, polylineLength, scaled, unitVector } from '@loopwright/geometry';
import type { LengthUnit, SitePoint } from '@loopwright/model';
import { parseTyped } from '../typed/typed-values.ts';

/** Where a typed value puts the next corner, or what was wrong with it in words. */
export type TypedCorner =
  | { readonly kind: 'corner'; readonly at: SitePoint }
  | { readonly kind: 'wrong'; readonly why: string };

/**
 * The next corner of what is drawn: at typed coordinates, or so far from the last one towards the pointer, straight on,
 * or along a typed bearing.
 *
 * @param placed  the corners so far
 * @param pointer  where the pointer is, if it is anywhere
 */
export function typedCorner(
  typed: string,
  units: LengthUnit,
  placed: readonly SitePoint[],
  pointer: SitePoint | undefined,
): TypedCorner {
  const read = parseTyped(typed, units);
  if (read.kind === 'wrong') return read;
  if (read.kind === 'place') return { kind: 'corner', at: read.at };
  const [before, from] = [placed.at(-2), placed.at(-1)];
  if (!from) return wrong('Place the first point: a length needs somewhere to start.');
  const metres = read.of === 'whole' ? read.metres - polylineLength(placed) : read.metres;
  if (metres <= 0) return wrong('It is as long already.');
  const towards =
    read.bearing === undefined
      ? ((pointer && unitVector(from, pointer)) ?? (before && unitVector(before, from)))
      : { x: Math.sin(read.bearing), y: Math.cos(read.bearing) };
  if (!towards) return wrong('Point where this side goes, or type its bearing too: 120 @ 45.');
  return { kind: 'corner', at: plus(from, scaled(towards, metres)) };
}

const wrong = (why: string) => ({ kind: 'wrong', why }) as const;
