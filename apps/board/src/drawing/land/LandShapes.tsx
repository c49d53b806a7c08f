import { memo, useMemo } from 'react';
import { FeatureShape } from '../FeatureShape.tsx';
import type { FeatureView } from '../feature-view.ts';
import { makePatterns } from '../patterns.ts';
import { BaseShape, BoundaryShape, MarkShape } from '../SiteShapes.tsx';
import type { LandShown } from './use-land.ts';

interface LandShapesProps {
  readonly land: LandShown;
  readonly scale: number;
}

/** Features, boundary, marks and bases. */
export const LandShapes = memo(function LandShapes({ land, scale }: LandShapesProps) {
  return (
    <>
      <Features features={land.features} scale={scale} />
      {land.boundary && <BoundaryShape boundary={land.boundary} />}
      {land.marks.map((mark) => (
        <MarkShape key={mark.id} mark={mark} scale={scale} />
      ))}
      {land.bases.map((base) => (
        <BaseShape key={base.id} base={base} scale={scale} />
      ))}
    </>
  );
});

interface FeaturesProps {
  readonly features: readonly FeatureView[];
  readonly scale: number;
}

export const Features = memo(function Features({ features, scale }: FeaturesProps) {
  const tiles = useMemo(() => makePatterns(document), []);
  return features.map((feature) => (
    <FeatureShape key={feature.id} view={feature} scale={scale} tile={tiles.get(feature.manner)} />
  ));
});
