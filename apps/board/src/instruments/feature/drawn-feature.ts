import type { NamedEdit } from '@loopwright/document';
import { type FeatureGeometry, type FeatureId, type FeatureKind, presetOf, type SitePoint } from '@loopwright/model';
import type { FeatureForm } from './feature-choice.ts';

/** The edit that puts a feature just drawn on the board: what it allows follows from its kind, until somebody says else. */
export function featureEdit(
  id: FeatureId,
  kind: FeatureKind,
  form: FeatureForm,
  points: readonly SitePoint[],
): Extract<NamedEdit, { edit: 'add features' }> {
  return { edit: 'add features', features: [{ id, kind, geometry: geometryOf(form, points), ...presetOf(kind) }] };
}

function geometryOf(form: FeatureForm, points: readonly SitePoint[]): FeatureGeometry {
  if (form === 'area') return { type: 'area', rings: [points] };
  if (form === 'line') return { type: 'line', points };
  const [at] = points;
  if (!at) throw new RangeError('geometryOf: a single place needs its point');
  return { type: 'point', at };
}
