import { CLOSE_CODES, type CloseReason } from '@loopwright/protocol';
import type { ServerLimits } from '../limits.ts';
import type { Metrics } from '../metrics.ts';
import type { Socket } from './socket.ts';

/** What is sent, for the counters; presence alone may be left out. */
export type SentKind = 'sync' | 'update' | 'presence' | 'committed' | 'refused';

/** The way to one reader, who may be slow. */
export interface Outbox {
  /** Presence is dropped for a slow reader; a reader too slow for anything else is closed, to come back and catch up. */
  send(bytes: Uint8Array, kind: SentKind): void;
  close(reason: CloseReason): void;
}

export function openOutbox(socket: Socket, limits: ServerLimits, metrics: Metrics): Outbox {
  let open = true;
  const close = (reason: CloseReason) => {
    if (!open) return;
    open = false;
    metrics.closed.inc({ code: reason.code });
    socket.close(reason);
  };
  return {
    close,
    send(bytes, kind) {
      if (!open) return;
      const buffered = socket.buffered();
      if (buffered > limits.bufferedBeforeClose) return close(CLOSE_CODES['slow-reader']);
      if (kind === 'presence' && buffered > limits.bufferedBeforeDrop) {
        metrics.framesDropped.inc({ kind: 'slow-reader' });
        return;
      }
      metrics.framesSent.inc({ kind });
      socket.send(bytes);
    },
  };
}
