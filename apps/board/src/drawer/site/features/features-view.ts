import { boundsOf, polylineLength, ringArea } from '@loopwright/geometry';
import {
  type Allows,
  FEATURE_KINDS,
  type Feature,
  type FeatureGeometry,
  type FeatureKind,
  type LengthUnit,
  presetOf,
  type SitePoint,
} from '@loopwright/model';
import { allowedWords } from '../../../reading/allows-words.ts';
import { areaWords } from '../../../reading/areas.ts';
import { lengthWords } from '../../../reading/lengths.ts';

export interface FeatureRow {
  readonly id: string;
  readonly title: string;
  readonly what: string;
}

/** The features of one kind. */
export interface FeatureGroup {
  readonly kind: FeatureKind;
  readonly rows: readonly FeatureRow[];
}

/** Features by kind, in the order kinds are offered; a filter finds words in name, kind, authority and note. */
export function featureGroups(
  features: readonly Feature[],
  filter: string,
  units: LengthUnit,
): readonly FeatureGroup[] {
  const wanted = filter.trim().toLocaleLowerCase('en');
  const byKind = new Map<FeatureKind, FeatureRow[]>();
  for (const feature of features) {
    if (wanted !== '' && !wordsOf(feature).includes(wanted)) continue;
    const rows = byKind.get(feature.kind) ?? [];
    rows.push(toRow(feature, units));
    byKind.set(feature.kind, rows);
  }
  return FEATURE_KINDS.flatMap((kind) => {
    const rows = byKind.get(kind);
    return rows ? [{ kind, rows }] : [];
  });
}

const wordsOf = ({ name = '', kind, authority = '', note = '' }: Feature) =>
  `${name}\n${kind}\n${authority}\n${note}`.toLocaleLowerCase('en');

function toRow({ id, name, kind, geometry, allows, buffer, authority }: Feature, units: LengthUnit): FeatureRow {
  const words = [sizeWords(geometry, units), allowedWords(allows)];
  if (buffer > 0) words.push(`${lengthWords(buffer, units)} kept around`);
  if (authority) words.push(authority);
  return { id, title: name ?? kind, what: words.join('; ') };
}

/** '1.24 ha', '412 m', 'a place'. */
export function sizeWords(geometry: FeatureGeometry, units: LengthUnit): string {
  if (geometry.type === 'point') return 'a place';
  if (geometry.type === 'line') return `a line of ${lengthWords(polylineLength(geometry.points), units)}`;
  const [outer, ...cut] = geometry.rings.map((ring) => Math.abs(ringArea(ring)));
  return areaWords(Math.max(0, (outer ?? 0) - cut.reduce((sum, area) => sum + area, 0)), units);
}

/** A place from which all of it can be seen: the middle of the box about it. */
export function middleOf(geometry: FeatureGeometry): SitePoint {
  if (geometry.type === 'point') return geometry.at;
  const box = boundsOf(geometry.type === 'line' ? geometry.points : (geometry.rings[0] ?? []));
  return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
}

/** Another kind: what it allows follows, unless somebody said else than its kind did. */
export function changedKind(
  feature: Feature,
  kind: FeatureKind,
): { readonly kind: FeatureKind; readonly allows?: Allows } {
  const was = presetOf(feature.kind).allows;
  const isPreset = Object.entries(was).every(([what, allowed]) =>
    Object.entries(feature.allows).some(([key, now]) => key === what && now === allowed),
  );
  return isPreset ? { kind, allows: presetOf(kind).allows } : { kind };
}
