import { holeOf, type Routing } from '@loopwright/model';
import type { HeldParts } from './tool.ts';

/** The pinned ones among parts that would move. */
export function pinnedAmong(routing: Routing, holds: readonly HeldParts[]): readonly HeldParts[] {
  return holds.flatMap(({ hole, parts }) => {
    const pinned = holeOf(routing, hole)?.pinned ?? [];
    const held = parts.filter((part) => pinned.includes(part));
    return held.length > 0 ? [{ hole, parts: held }] : [];
  });
}
