import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import type { RoundRhythm } from './round-rhythm.ts';

/**
 * A long par 3 or a reachable par 5 among the opening holes, where groups would wait for each other.
 *
 * Source: C. Johnston, Routing considerations (clydejohnston.com): none in the first four holes; if it cannot be
 * avoided, the par 3 no longer than 160 to 165 yd.
 */
export function checkOpening({ holes, settings }: RoundRhythm): readonly Finding[] {
  const opening = holes.filter(({ number }) => number <= settings['opening-holes']);
  return opening.flatMap(({ id, par, tee, greenCentre }) => {
    const noticed = { holes: [id], measured: tee.measuredLength, unit: 'm' } as const;
    const place = { type: 'line', points: [tee.at, greenCentre] } as const;
    const long = onlyTier('long-par-three-mention', settings);
    if (par === 3 && tee.measuredLength > long.limit) {
      return [roundFinding({ code: 'long-par-three-early', ...noticed, tier: long, worse: 'more', place })];
    }
    const reachable = onlyTier('reachable-par-five-mention', settings);
    if (par === 5 && tee.measuredLength <= reachable.limit) {
      return [roundFinding({ code: 'reachable-par-five-early', ...noticed, tier: reachable, worse: 'less', place })];
    }
    return [];
  });
}
