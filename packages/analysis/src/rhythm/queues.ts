import { reachOf } from '../card/model-player.ts';
import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import { queueWaits } from './queue-wait.ts';
import type { RoundHole } from './round-holes.ts';
import type { RoundRhythm } from './round-rhythm.ts';

/**
 * Queues at the start of a round: at an early par 3, and at an early par 4 whose green can be driven, both of which
 * hold one group at a time.
 *
 * Source: the published model of `queueWaits`; times and interval are settings.
 */
export function checkQueues(rhythm: RoundRhythm): readonly Finding[] {
  const { holes, settings, name } = rhythm;
  const early = holes.filter(({ number }) => number <= settings['queue-early-holes']);
  const held = early.flatMap((hole) => {
    if (hole.par === 3) return [{ hole, time: settings['par-three-time'] }];
    return isDrivable(hole, rhythm) ? [{ hole, time: settings['drivable-time'] }] : [];
  });
  const tier = onlyTier('queue-wait-mention', settings);
  return queueWaits(held, settings['start-interval'], settings['queue-group']).flatMap(({ hole, wait }) => {
    if (wait <= tier.limit) return [];
    return [
      roundFinding({
        code: 'queue',
        holes: [hole.id],
        measured: wait,
        tier,
        unit: 'min',
        worse: 'more',
        place: { type: 'point', at: hole.tee.at },
        detail: { group: settings['queue-group'], interval: settings['start-interval'], round: name },
      }),
    ];
  });
}

/** A par 4 whose green the longest tee's player may reach from the tee, roll and all. */
function isDrivable({ par, tee }: RoundHole, { settings }: RoundRhythm): boolean {
  return par === 4 && tee.measuredLength <= reachOf(tee.player, settings).drive + settings['fan-roll'];
}
