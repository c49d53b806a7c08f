import { dot, plus, scaled } from '@loopwright/geometry';
import { type Green, type GreenShape, LIMITS, type Ring, type SitePoint, toMillimetre } from '@loopwright/model';

/** A green is at least so long and wide, in metres: smaller, no flag has room. */
export const LEAST_GREEN = 4;

/** Unit vectors along a green's axis and across it, to the right. */
export function axesOf(bearing: number): { readonly along: SitePoint; readonly across: SitePoint } {
  const [sine, cosine] = [Math.sin(bearing), Math.cos(bearing)];
  return { along: { x: sine, y: cosine }, across: { x: cosine, y: -sine } };
}

/** The shape without its place. */
export function shapeOf({ length, width, bearing, outline }: Green): GreenShape {
  return { length, width, bearing, ...(outline ? { outline } : {}) };
}

/** The green with another length or width, within what a green can be; an outline of its own is stretched with it. */
export function sized(green: GreenShape, to: { readonly length?: number; readonly width?: number }): GreenShape {
  const length = within(to.length ?? green.length);
  const width = within(to.width ?? green.width);
  const shape = { ...green, length, width };
  if (!green.outline) return shape;
  const { along, across } = axesOf(green.bearing);
  const [longer, wider] = [length / green.length, width / green.width];
  return { ...shape, outline: green.outline.map((at) => stretched(at, along, across, longer, wider)) };
}

/** The green turned to another bearing; an outline of its own turns with it. */
export function turned(green: GreenShape, bearing: number): GreenShape {
  const shape = { ...green, bearing: rounded(bearing) };
  if (!green.outline) return shape;
  const [was, is] = [axesOf(green.bearing), axesOf(shape.bearing)];
  const outline = green.outline.map((at) =>
    toMillimetres(plus(scaled(is.along, dot(at, was.along)), scaled(is.across, dot(at, was.across)))),
  );
  return { ...shape, outline };
}

/**
 * A green drawn by its outline: relative to its centre, with the length and width of the box about it on its bearing,
 * so that it has a size for everything that asks.
 */
export function outlined(green: GreenShape, outline: Ring): GreenShape {
  const { along, across } = axesOf(green.bearing);
  const reach = (axis: SitePoint) => {
    const places = outline.map((at) => dot(at, axis));
    return within(Math.max(...places) - Math.min(...places));
  };
  return { ...green, outline: outline.map(toMillimetres), length: reach(along), width: reach(across) };
}

/** The oval again, of the same size and lie. */
export function oval({ length, width, bearing }: GreenShape): GreenShape {
  return { length, width, bearing };
}

function stretched(at: SitePoint, along: SitePoint, across: SitePoint, longer: number, wider: number): SitePoint {
  return toMillimetres(plus(scaled(along, dot(at, along) * longer), scaled(across, dot(at, across) * wider)));
}

const within = (size: number) => toMillimetre(Math.min(LIMITS.greenSize, Math.max(LEAST_GREEN, size)));

/** To the microradian, in [0, 2π). */
function rounded(bearing: number): number {
  const turn = 2 * Math.PI;
  return Math.round((((bearing % turn) + turn) % turn) * 1e6) / 1e6;
}

const toMillimetres = ({ x, y }: SitePoint): SitePoint => ({ x: toMillimetre(x), y: toMillimetre(y) });
