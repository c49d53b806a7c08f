import type { Offer, RoomDocument } from '@loopwright/document/server';

/**
 * A room's document for tests of the gate: an update is one byte, its state the bytes in order.
 *
 * 0 is refused as malformed; a byte more than one above the last is early.
 */
export function listDocument(): RoomDocument & { readonly held: readonly number[] } {
  const held: number[] = [];
  const offer = (update: Uint8Array, rights: 'read' | 'write'): Offer => {
    const [value = 0] = update;
    if (value === 0) return { kind: 'refused', code: 'malformed' };
    if (held.includes(value)) return { kind: 'known' };
    if (rights === 'read') return { kind: 'refused', code: 'not-a-writer' };
    return value > (held.at(-1) ?? 0) + 1 ? { kind: 'early' } : { kind: 'new', update };
  };
  return {
    held,
    offer,
    apply: (update) => {
      held.push(...update);
    },
    forgo: () => undefined,
    vector: () => new Uint8Array([held.length]),
    missing: ([have = 0]) => new Uint8Array(held.slice(have)),
    state: () => new Uint8Array(held),
    close: () => undefined,
  };
}
