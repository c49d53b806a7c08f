import type { FeatureKind } from '@loopwright/model';
import type { Element, LonLat, Shape } from '../geojson/element.ts';
import { kindOf } from '../geojson/kind-of.ts';
import { counted, type NoteBook, pluralOf } from '../note.ts';

/** The mapped things of a file by what they are to a course. */
export interface SortedElements {
  readonly holes: readonly Element[];
  readonly tees: readonly Element[];
  readonly greens: readonly Element[];
  readonly boundaries: readonly Element[];
  readonly clubhouses: readonly Element[];
  readonly features: readonly { readonly element: Element; readonly kind: FeatureKind }[];
}

const WAYS: ReadonlySet<FeatureKind> = new Set(['course path', 'public path', 'public road']);

/** Sorts what a file holds; things without a place on a board are counted in notes. */
export function sortedElements(elements: readonly Element[], notes: NoteBook): SortedElements {
  const sorted = {
    holes: [] as Element[],
    tees: [] as Element[],
    greens: [] as Element[],
    boundaries: [] as Element[],
    clubhouses: [] as Element[],
    features: [] as { element: Element; kind: FeatureKind }[],
  };
  const left = new Map<string, number>();
  const leave = (what: string) => left.set(what, (left.get(what) ?? 0) + 1);
  for (const element of elements) {
    const kind = kindOf(element.tags);
    if (kind.is === 'hole') {
      if (element.shape.type === 'line') sorted.holes.push(element);
      else leave('hole not drawn as a line');
    } else if (kind.is === 'feature') {
      const isWay = WAYS.has(kind.kind);
      sorted.features.push({ kind: kind.kind, element: isWay ? element : withClosedLinesAsAreas(element) });
    } else if (kind.is === 'clubhouse') sorted.clubhouses.push(withClosedLinesAsAreas(element));
    else if (kind.is === 'unknown') leave('thing with tags of no use here');
    else if (kind.is === 'left out') leave(kind.what);
    else {
      const area = withClosedLinesAsAreas(element);
      const lists = { tee: sorted.tees, green: sorted.greens, boundary: sorted.boundaries };
      if (area.shape.type === 'area') lists[kind.is].push(area);
      else leave(`${kind.is} not drawn as an area`);
    }
  }
  for (const [what, count] of left) notes.add(`Left out: ${counted(count, what, pluralOf(what))}.`);
  return sorted;
}

/** Some exports draw outlines as closed lines. */
function withClosedLinesAsAreas(element: Element): Element {
  const { shape } = element;
  if (shape.type !== 'line' || !shape.pieces.every(isClosed)) return element;
  const area: Shape = { type: 'area', parts: shape.pieces.map((piece) => [piece.slice(0, -1)]) };
  return { ...element, shape: area };
}

function isClosed(piece: readonly LonLat[]): boolean {
  const [first, last] = [piece[0], piece.at(-1)];
  return piece.length >= 4 && first !== undefined && first.lon === last?.lon && first.lat === last.lat;
}
