import { toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import type { RoundContext } from '../round-context.ts';
import { findPartNearest } from './mark-parts.ts';

/**
 * Site marks that no hole in play has taken up: no green on a green site, no tee on a tee site, no landing area on
 * landing ground. Measured: metres to the nearest such part. Source: common practice, no source.
 */
export function checkSiteMarks({ plan, order, figures, settings }: RoundContext): readonly Finding[] {
  const holes = order.flatMap((id) => figures.get(id) ?? []);
  const tier = onlyTier('mark-taken-up', settings);
  return plan.site.marks.flatMap((mark) => {
    const distances = holes.flatMap((hole) => findPartNearest(mark, hole)?.distance ?? []);
    const measured = toMillimetre(Math.min(...distances));
    if (distances.length === 0 || measured <= tier.limit) return [];
    return [
      roundFinding({
        code: 'mark-unused',
        holes: [],
        about: mark.id,
        measured,
        tier,
        unit: 'm',
        worse: 'more',
        place: { type: 'point', at: mark.at },
        detail: { mark: mark.kind, verdict: mark.verdict, ...(mark.note !== undefined && { note: mark.note }) },
      }),
    ];
  });
}
