import { distanceBetween } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import type { Bench, Snapped } from '../instrument.ts';
import { jointsOf, type PinnedEnd, type Rod, swungTowards } from './rod.ts';

/** Pixels a joint may lie off what pulls at it: a rod only turns, it does not stretch. */
const GIVE = 10;
/** What the bench calls the ring on which a joint can lie; it says nothing to a reader. */
const OWN_RING = 'rod';

export interface SwungRod {
  readonly rod: Rod;
  readonly snapped?: Snapped;
}

/**
 * The rod swung about a joint towards the pointer, and on a little where a further joint then comes to lie on a site
 * mark, a feature's edge or another guide at its distance. The nearer joints are pulled first.
 */
export function swungBy(bench: Bench, rod: Rod, joint: number, at: SitePoint, end: PinnedEnd): SwungRod {
  const pointed = swungTowards(rod, joint, joint + 1, at);
  const joints = jointsOf(pointed);
  const centre = joints[joint];
  if (!centre) return { rod };
  for (let further = joint + 1; further < joints.length; further++) {
    const place = joints[further];
    if (!place) break;
    const radius = distanceBetween(centre, place);
    const wishes = { for: purposeOf(further, joints.length, end), rings: [{ centre, radius, because: OWN_RING }] };
    const snapped = bench.snap(place, wishes);
    const because = snapped.because?.split(', ').filter((each) => each !== OWN_RING) ?? [];
    const off = Math.abs(distanceBetween(centre, snapped.at) - radius);
    if (because.length === 0 || off * bench.scale() > GIVE) continue;
    return {
      rod: swungTowards(pointed, joint, further, snapped.at),
      snapped: { ...snapped, because: because.join(', ') },
    };
  }
  return { rod: pointed };
}

/** What a joint will be of a hole: a turn, or the end that is not pinned. */
function purposeOf(joint: number, count: number, end: PinnedEnd): 'turn' | 'green' | 'tee' {
  if (joint < count - 1) return 'turn';
  return end === 'tee' ? 'green' : 'tee';
}
