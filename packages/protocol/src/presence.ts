import * as decoding from 'lib0/decoding';
import * as encoding from 'lib0/encoding';
import type { Malformed } from './frames.ts';
import { LIMITS } from './limits.ts';

/** What one open page shows the others; `state` is `null` when it has left. */
export interface PresenceEntry {
  readonly client: number;
  /** Grows with every word of that page; an older one never replaces a newer. */
  readonly clock: number;
  readonly state: unknown;
}

/**
 * The payload of a presence frame as its entries. Never throws.
 *
 * @param mostBytes  of one entry's state
 */
export function parsePresence(
  payload: Uint8Array,
  mostBytes: number = LIMITS.mostPresenceBytes,
): readonly PresenceEntry[] | Malformed {
  try {
    const decoder = decoding.createDecoder(payload);
    const count = decoding.readVarUint(decoder);
    if (count > LIMITS.mostPresenceEntries) return { kind: 'malformed', why: 'too many presence entries' };
    const entries: PresenceEntry[] = [];
    for (let i = 0; i < count; i++) {
      const client = decoding.readVarUint(decoder);
      const clock = decoding.readVarUint(decoder);
      const before = decoder.pos;
      const words = decoding.readVarString(decoder);
      if (decoder.pos - before > mostBytes) return { kind: 'malformed', why: 'presence too large' };
      entries.push({ client, clock, state: JSON.parse(words) });
    }
    if (decoding.hasContent(decoder)) return { kind: 'malformed', why: 'bytes left over' };
    return entries;
  } catch (error) {
    return { kind: 'malformed', why: error instanceof Error ? error.message : 'unreadable' };
  }
}

/** Entries as the payload of a presence frame. */
export function encodePresence(entries: readonly PresenceEntry[]): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, entries.length);
  for (const { client, clock, state } of entries) {
    encoding.writeVarUint(encoder, client);
    encoding.writeVarUint(encoder, clock);
    encoding.writeVarString(encoder, JSON.stringify(state));
  }
  return encoding.toUint8Array(encoder);
}
