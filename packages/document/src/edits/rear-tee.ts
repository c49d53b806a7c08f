import type { Hole, SitePoint, TeeSet, TeeSetId } from '@loopwright/model';

/** The rearmost tee placed by hand: the first tee set, from the back, that has one. */
export function rearTee(
  hole: Hole,
  teeSets: readonly TeeSet[],
): { readonly id: TeeSetId; readonly at: SitePoint } | undefined {
  for (const { id } of teeSets) {
    const at = hole.tees[id];
    if (at) return { id, at };
  }
  return undefined;
}
