import type { HoleId } from '@loopwright/model';
import { checkHoleBoundary } from '../clearance/boundary.ts';
import { checkHoleFeatures } from '../clearance/features.ts';
import { type SiteEdges, siteEdges } from '../clearance/site-edges.ts';
import type { Finding } from '../figures.ts';
import type { BoardInputs } from './board-inputs.ts';
import type { HoleStage } from './hole-stage.ts';
import { openMemory } from './memory.ts';

/** Every hole in play against the boundary and the features; holes that did not move are remembered. */
export function openFeatureStage() {
  const edgesOf = openMemory<SiteEdges | undefined>();
  const findingsOf = openMemory<readonly Finding[]>();
  return (order: readonly HoleId[], holes: HoleStage, { features, limits }: BoardInputs): readonly Finding[] => {
    const { boundary } = features;
    const edges = edgesOf.recall('edges', [boundary], () => boundary && siteEdges(boundary));
    const found = order.flatMap((id) => {
      const hole = holes.reach(id);
      if (!hole) return [];
      return findingsOf.recall(id, [hole, features, limits, edges], () => [
        ...(edges ? checkHoleBoundary(hole, edges, limits) : []),
        ...checkHoleFeatures(hole, features, limits),
      ]);
    });
    findingsOf.forgetUnused();
    return found;
  };
}
