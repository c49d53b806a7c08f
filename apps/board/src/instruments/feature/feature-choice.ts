import type { FeatureGeometry, FeatureKind } from '@loopwright/model';
import { openSlot, type Slot } from '../../live/slot.ts';

/** How a feature is drawn. */
export type FeatureForm = FeatureGeometry['type'];

/** What the next feature is; kept for the next time the instrument is taken. */
export interface FeatureChoice {
  readonly kind: Slot<FeatureKind>;
  readonly form: Slot<FeatureForm>;
}

export const openFeatureChoice = (): FeatureChoice => ({
  kind: openSlot<FeatureKind>('water'),
  form: openSlot<FeatureForm>('area'),
});

const LINES: ReadonlySet<FeatureKind> = new Set(['public road', 'public path', 'course path', 'utility', 'flood line']);

/** How such a feature is drawn to begin with. */
export function usualForm(kind: FeatureKind): FeatureForm {
  if (LINES.has(kind)) return 'line';
  return kind === 'landmark' ? 'point' : 'area';
}

/** Takes another kind, in its usual form. */
export function chooseKind({ kind, form }: FeatureChoice, next: FeatureKind): void {
  kind.set(next);
  form.set(usualForm(next));
}
