import { boundsOf, pointAlong, polylineLength, ringArea, ringCentroid } from '@loopwright/geometry';
import type { Feature, FeatureKind, SitePoint } from '@loopwright/model';
import { toSheetLine } from './site-transform.ts';

/** How a kind is drawn: pattern and line tell it apart without colour; its name is written where there is room. */
export type FeatureManner =
  | 'water'
  | 'wetland'
  | 'trees'
  | 'kept out'
  | 'sand'
  | 'mown'
  | 'building'
  | 'road'
  | 'path'
  | 'line'
  | 'landmark'
  | 'plain';

const MANNERS: Readonly<Record<FeatureKind, FeatureManner>> = {
  water: 'water',
  wetland: 'wetland',
  trees: 'trees',
  protected: 'kept out',
  neighbour: 'kept out',
  easement: 'line',
  'flood line': 'line',
  utility: 'line',
  building: 'building',
  'public road': 'road',
  'public path': 'path',
  'course path': 'path',
  landmark: 'landmark',
  bunker: 'sand',
  fairway: 'mown',
  range: 'mown',
  'ground unit': 'plain',
  other: 'plain',
};

export interface FeatureView {
  readonly id: string;
  readonly manner: FeatureManner;
  readonly kind: FeatureKind;
  /** Outer outline first, then holes in it; sheet units. */
  readonly areas: readonly (readonly number[])[];
  readonly line?: readonly number[];
  readonly at?: SitePoint;
  /** Name, or the kind where it has none and a reader must know. */
  readonly label?: string;
  readonly labelAt: SitePoint;
  /** Across, in metres: a name wider than what it names is left out. */
  readonly across: number;
}

/** Kinds that say what they are even without a name. */
const SAY_THE_KIND: ReadonlySet<FeatureKind> = new Set([
  'protected',
  'easement',
  'flood line',
  'utility',
  'neighbour',
  'range',
]);

/** Names that only say what lies under every hole: mapped tees and greens that no hole took up. */
const SAYS_NOTHING: ReadonlySet<string> = new Set(['Tee', 'Green']);

function labelOf({ name, kind }: Feature): string | undefined {
  if (name !== undefined) return SAYS_NOTHING.has(name) ? undefined : name;
  return SAY_THE_KIND.has(kind) ? kind : undefined;
}

export function toFeatureView(feature: Feature): FeatureView | undefined {
  const { geometry, kind } = feature;
  const label = labelOf(feature);
  const base = { id: feature.id, manner: MANNERS[kind], kind, ...(label ? { label } : {}) };
  if (geometry.type === 'point') return { ...base, areas: [], at: geometry.at, labelAt: geometry.at, across: Infinity };
  if (geometry.type === 'line') {
    if (geometry.points.length < 2) return undefined;
    const length = polylineLength(geometry.points);
    return {
      ...base,
      areas: [],
      line: toSheetLine(geometry.points),
      labelAt: pointAlong(geometry.points, length / 2),
      across: length,
    };
  }
  const outer = geometry.rings[0];
  if (!outer || outer.length < 3) return undefined;
  const box = boundsOf(outer);
  const middle = Math.abs(ringArea(outer)) > 0 ? ringCentroid(outer) : outer[0];
  if (!middle) return undefined;
  return { ...base, areas: geometry.rings.map(toSheetLine), labelAt: middle, across: box.maxX - box.minX };
}

/** Features in the order they are drawn: areas, then lines, then points. Made anew only for those that are not as before. */
export function openFeatureViews(): (features: readonly Feature[]) => readonly FeatureView[] {
  const made = new WeakMap<Feature, FeatureView | 'nothing'>();
  const viewOf = (feature: Feature): FeatureView | 'nothing' => {
    const view = made.get(feature) ?? toFeatureView(feature) ?? 'nothing';
    made.set(feature, view);
    return view;
  };
  const rank = (view: FeatureView) => (view.at ? 2 : view.line ? 1 : 0);
  return (features) =>
    features
      .flatMap((feature) => {
        const view = viewOf(feature);
        return view === 'nothing' ? [] : [view];
      })
      .sort((a, b) => rank(a) - rank(b));
}
