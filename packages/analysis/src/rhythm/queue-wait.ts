/** A hole that holds one group at a time, and for how long, minutes. */
export interface OneGroupHole<Hole> {
  readonly hole: Hole;
  readonly time: number;
}

/** A group's wait on the tee of such a hole, minutes. */
export interface QueueWait<Hole> extends OneGroupHole<Hole> {
  readonly wait: number;
}

/**
 * How long one group waits on each hole that holds a single group at a time.
 *
 * Groups start at even intervals. Where a hole takes longer than they come apart, each waits longer than the one
 * before by the difference, and from there on they come apart by the time the hole takes: a later hole no slower
 * than that sees no queue.
 *
 * @param interval  between groups, minutes
 * @param group  which group, from 1: the first never waits
 * Source: R&A Pace of Play Manual (2016), section 2.2, worked example of a par 3.
 */
export function queueWaits<Hole>(
  holes: readonly OneGroupHole<Hole>[],
  interval: number,
  group: number,
): readonly QueueWait<Hole>[] {
  let apart = interval;
  return holes.map((each) => {
    const wait = (group - 1) * Math.max(0, each.time - apart);
    apart = Math.max(apart, each.time);
    return { ...each, wait };
  });
}
