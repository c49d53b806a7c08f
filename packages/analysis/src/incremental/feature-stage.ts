import type { HoleId, Plan } from '@loopwright/model';
import { checkHoleOnSite, type SiteGround, siteGround } from '../clearance/site-ground.ts';
import type { Finding } from '../figures.ts';
import type { BoardInputs } from './board-inputs.ts';
import type { HoleStage } from './hole-stage.ts';
import { openMemory } from './memory.ts';

/** Every hole in play against the boundary, the features and the range; holes that did not move are remembered. */
export function openFeatureStage() {
  const groundOf = openMemory<SiteGround>();
  const findingsOf = openMemory<readonly Finding[]>();
  return (
    { site }: Plan,
    order: readonly HoleId[],
    holes: HoleStage,
    { features, limits }: BoardInputs,
  ): readonly Finding[] => {
    const make = () => siteGround(features, site.bases, limits);
    const ground = groundOf.recall('ground', [features, limits, ...site.bases], make);
    const found = order.flatMap((id) => {
      const hole = holes.reach(id);
      if (!hole) return [];
      return findingsOf.recall(id, [hole, ground], () => checkHoleOnSite(hole, ground, limits));
    });
    findingsOf.forgetUnused();
    return [...ground.findings, ...found];
  };
}
