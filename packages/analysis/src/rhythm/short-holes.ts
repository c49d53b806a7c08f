import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import type { RoundRhythm } from './round-rhythm.ts';

/**
 * Short holes, whatever their par, that come close together. Par 3s in a row are told by themselves.
 *
 * Measured: holes between. Source: common practice, no source.
 */
export function checkShortHoles({ holes, settings }: RoundRhythm): readonly Finding[] {
  const tier = onlyTier('short-holes-apart', settings);
  const short = holes.filter(({ tee }) => tee.measuredLength <= settings['short-hole']);
  if (short.length === holes.length) return [];
  return short.flatMap((hole, i) => {
    const next = short[i + 1];
    const between = next ? next.number - hole.number - 1 : Number.POSITIVE_INFINITY;
    if (!next || between > tier.limit) return [];
    if (between === 0 && hole.par === 3 && next.par === 3) return [];
    const noticed = { code: 'short-holes-close', holes: [hole.id, next.id], measured: between, tier } as const;
    // A long par 3 is no short hole to a reader: two par 3s are called that.
    const detail = hole.par === 3 && next.par === 3 ? { pars: '3' } : {};
    return [roundFinding({ ...noticed, unit: 'holes', worse: 'less', detail })];
  });
}
