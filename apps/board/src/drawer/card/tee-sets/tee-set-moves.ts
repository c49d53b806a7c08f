import type { NamedEdit } from '@loopwright/document';
import { LIMITS, type ModelPlayer, type TeeSet, type TeeSetId } from '@loopwright/model';

/** In the order a list offers them: the longest first. */
export const PLAYERS: readonly ModelPlayer[] = ['scratch man', 'bogey man', 'scratch woman', 'bogey woman'];

/** Whether another set can be added on the board. A file may bring more. */
export function canAddTeeSet(sets: readonly TeeSet[]): boolean {
  return sets.length < LIMITS.teeSetsOnBoard;
}

/** A new set in front of all others, for the player of the one before it: its tees are proposed until placed. */
export function addTeeSetEdit(sets: readonly TeeSet[], id: TeeSetId): NamedEdit | undefined {
  if (!canAddTeeSet(sets)) return undefined;
  const last = sets.at(-1);
  const teeSet: TeeSet = { id, name: freeName(sets), player: last?.player ?? 'bogey woman' };
  return { edit: 'add tee set', teeSet, after: last?.id ?? 'first' };
}

function freeName(sets: readonly TeeSet[]): string {
  const taken = new Set(sets.map(({ name }) => name));
  const free = ['Forward', 'Front', 'Short'].find((name) => !taken.has(name));
  return free ?? `Tees ${sets.length + 1}`;
}

/** The edit that puts a set one place further back (−1) or forward (+1); `undefined` at either end. */
export function moveTeeSetEdit(sets: readonly TeeSet[], teeSet: TeeSetId, step: 1 | -1): NamedEdit | undefined {
  const place = sets.findIndex(({ id }) => id === teeSet);
  const others = sets.filter(({ id }) => id !== teeSet);
  const next = place + step;
  if (place < 0 || next < 0 || next >= sets.length) return undefined;
  return { edit: 'order tee set', teeSet, after: others[next - 1]?.id ?? 'first' };
}

/** How many holes, over all routings, have a tee of each set placed by hand. */
export function placedTees(
  routings: readonly { readonly holes: readonly { readonly tees: Readonly<Record<TeeSetId, unknown>> }[] }[],
  teeSet: TeeSetId,
): number {
  return routings.flatMap(({ holes }) => holes).filter(({ tees }) => tees[teeSet] !== undefined).length;
}
