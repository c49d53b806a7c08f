/** Keeps a list for as long as its members are the same ones, so that what is drawn from it is not drawn anew. */
export function openSteadyList<Member>(): (now: readonly Member[]) => readonly Member[] {
  let kept: readonly Member[] = [];
  return (now) => {
    if (now === kept) return kept;
    const same = now.length === kept.length && now.every((member, index) => Object.is(member, kept[index]));
    if (!same) kept = now;
    return kept;
  };
}
