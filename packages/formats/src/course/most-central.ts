/**
 * The member with the least sum of distances to all others: unlike a mean it is one of them, and strays do not move it.
 *
 * Cost: O(n²) distances.
 */
export function mostCentral<Member>(
  members: readonly Member[],
  apart: (a: Member, b: Member) => number,
): Member | undefined {
  let best: { member: Member; sum: number } | undefined;
  for (const member of members) {
    let sum = 0;
    for (const other of members) sum += apart(member, other);
    if (best === undefined || sum < best.sum) best = { member, sum };
  }
  return best?.member;
}
