import type { SitePoint } from '@loopwright/model';
import type { FeatureView } from './feature-view.ts';
import type { FindingView } from './finding-view.ts';
import type { HoleView } from './hole-view.ts';
import { keepSteady, type Labels, layLabels } from './labels.ts';

/** What is labelled, and how large it is seen. */
interface Labelled {
  readonly holes: readonly HoleView[];
  readonly findings: readonly FindingView[];
  readonly features: readonly FeatureView[];
  readonly symbols: readonly SitePoint[];
  /** Pixels per metre. */
  readonly scale: number;
}

/**
 * A maker of labels that keeps what need not be drawn anew. While somebody drags, the names of features stay where they
 * stand: they would flit about under the moving numbers, and all the ground be drawn again with each of them.
 */
export function openLabels(): (now: Labelled, hands: 'dragging' | 'at rest') => Labels {
  let last: { readonly of: Labelled; readonly labels: Labels } | undefined;
  return (now, hands) => {
    const { holes, findings, features, symbols, scale } = now;
    const held = hands === 'dragging' && last?.of.features === features && last.of.scale === scale;
    const laid = layLabels(holes, findings, held ? [] : features, held ? [] : symbols, scale);
    const names = held ? last?.labels.names : undefined;
    const labels = keepSteady(last?.labels, names ? { ...laid, names } : laid, scale);
    last = { of: now, labels };
    return labels;
  };
}
