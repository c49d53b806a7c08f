import { encodeFrame, encodePresence, parseFrame, parsePresence } from '@loopwright/protocol';

/**
 * A socket that looks at each frame before it goes out.
 *
 * @param outgoing  the frame to send in its place; `undefined` to send nothing
 */
export function planSocket(
  Base: typeof WebSocket,
  outgoing: (frame: Uint8Array) => Uint8Array | undefined,
): typeof WebSocket {
  return class PlanSocket extends Base {
    override send(data: Parameters<WebSocket['send']>[0]): void {
      const frame = data instanceof Uint8Array ? outgoing(data) : undefined;
      if (frame) super.send(Uint8Array.from(frame));
    }
  };
}

/** What a frame on its way out is to the connection. */
export type Outgoing =
  | { readonly kind: 'counted' | 'plain'; readonly frame: Uint8Array }
  /** Presence of others alone: the stock client repeats everybody's, 49 own messages made 441. */
  | { readonly kind: 'dropped' };

/** Sorts a frame of this page's own provider: other people's presence is taken out of it (P3), updates are counted (S1). */
export function sortOutgoing(bytes: Uint8Array, client: number): Outgoing {
  const frame = parseFrame(bytes, Number.POSITIVE_INFINITY); // the server says if it is too long: counted all the same
  if (frame.kind === 'step 2' || frame.kind === 'update') return { kind: 'counted', frame: bytes };
  if (frame.kind !== 'presence') return { kind: 'plain', frame: bytes };
  const entries = parsePresence(frame.presence);
  if ('kind' in entries) return { kind: 'dropped' };
  const own = entries.filter((entry) => entry.client === client);
  if (own.length === 0) return { kind: 'dropped' };
  return { kind: 'plain', frame: encodeFrame({ kind: 'presence', presence: encodePresence(own) }) };
}
