/** Longitude and latitude in degrees, as mapped. */
export interface LonLat {
  readonly lon: number;
  readonly lat: number;
}

/** A mapped thing's tags: plain texts. */
export type Tags = Readonly<Record<string, string>>;

export type Shape =
  | { readonly type: 'point'; readonly at: LonLat }
  /** One or more pieces, as drawn. */
  | { readonly type: 'line'; readonly pieces: readonly (readonly LonLat[])[] }
  /** Per part the outer outline first, then those cut out of it; closing repeats taken off. */
  | { readonly type: 'area'; readonly parts: readonly (readonly (readonly LonLat[])[])[] };

/** One mapped thing of a file. */
export interface Element {
  readonly tags: Tags;
  readonly shape: Shape;
}

/** The outer outlines, pieces or place of a shape, as plain runs of positions. */
export function runsOf(shape: Shape): readonly (readonly LonLat[])[] {
  if (shape.type === 'point') return [[shape.at]];
  return shape.type === 'line' ? shape.pieces : shape.parts.flatMap((rings) => rings.slice(0, 1));
}

/** The same thing with every position changed by `change`. */
export function withPositions(element: Element, change: (position: LonLat) => LonLat): Element {
  const { shape } = element;
  const run = (positions: readonly LonLat[]) => positions.map(change);
  if (shape.type === 'point') return { ...element, shape: { type: 'point', at: change(shape.at) } };
  if (shape.type === 'line') return { ...element, shape: { type: 'line', pieces: shape.pieces.map(run) } };
  return { ...element, shape: { type: 'area', parts: shape.parts.map((rings) => rings.map(run)) } };
}

/** The elements with only the positions that `keeps` accepts; elements that have too few left are gone. */
export function keepingPositions(
  elements: readonly Element[],
  keeps: (position: LonLat) => boolean,
): { readonly elements: readonly Element[]; readonly lost: number } {
  let lost = 0;
  const run = (positions: readonly LonLat[]) => {
    const kept = positions.filter(keeps);
    lost += positions.length - kept.length;
    return kept.length === positions.length ? positions : kept;
  };
  const kept = elements.flatMap((element): readonly Element[] => {
    const { shape } = element;
    if (shape.type === 'point') return run([shape.at]).length === 1 ? [element] : [];
    if (shape.type === 'line') {
      const pieces = shape.pieces.map(run).filter((piece) => piece.length >= 2);
      return pieces.length > 0 ? [{ ...element, shape: { type: 'line', pieces } }] : [];
    }
    const parts = shape.parts.map((rings) => rings.map(run)).filter(([outer]) => (outer?.length ?? 0) >= 3);
    return parts.length > 0 ? [{ ...element, shape: { type: 'area', parts } }] : [];
  });
  return { elements: kept, lost };
}
