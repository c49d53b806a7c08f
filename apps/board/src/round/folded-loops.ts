import type { LoopId } from '@loopwright/model';
import { isId, isList } from '@loopwright/model';

/** So many loops are remembered as folded; the ones folded first are forgotten. */
const MOST_KEPT = 60;

/** The loops kept as folded on this machine; anything else that was kept there is none. */
export function readFolded(kept: string | undefined): ReadonlySet<LoopId> {
  if (kept === undefined) return new Set();
  try {
    const value: unknown = JSON.parse(kept);
    return new Set(isList(value, MOST_KEPT) ? value.filter(isId) : []);
  } catch {
    return new Set(); // something else wrote there: every loop is open
  }
}

/** The folded loops as they are kept. */
export function foldedWords(folded: ReadonlySet<LoopId>): string {
  return JSON.stringify([...folded].slice(-MOST_KEPT));
}

/** One loop more folded, or one less if it was. */
export function turnFolded(folded: ReadonlySet<LoopId>, loop: LoopId): ReadonlySet<LoopId> {
  const others = [...folded].filter((each) => each !== loop);
  return new Set(folded.has(loop) ? others : [...others, loop]);
}
