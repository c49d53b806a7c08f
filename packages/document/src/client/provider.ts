import { isPermanentClose, LIMITS, roomPath } from '@loopwright/protocol';
import type { Awareness } from 'y-protocols/awareness';
import { WebsocketProvider } from 'y-websocket';
import type { ConnectOptions } from '../contract.ts';
import type { SharedPlan } from '../plan-document.ts';
import { planSocket, sortOutgoing } from './plan-socket.ts';
import type { Tally } from './tally.ts';

/** The stock provider, with our socket, our count of what is saved, and jittered waits between tries. */
export function openProvider(plan: SharedPlan, options: ConnectOptions, awareness: Awareness, tally: Tally) {
  const { board, membership, random = Math.random } = options;
  const socket = planSocket(options.socket ?? WebSocket, (bytes) => {
    const outgoing = sortOutgoing(bytes, awareness.clientID);
    if (outgoing.kind === 'dropped') return undefined;
    if (outgoing.kind === 'counted') tally.sent();
    return outgoing.frame;
  });
  const provider = new WebsocketProvider(options.url, roomPath({ board, membership, room: 'plan' }), plan.doc, {
    connect: false,
    disableBc: true,
    awareness,
    WebSocketPolyfill: socket,
    shouldReconnect: ({ code }) => !isPermanentClose(code),
  });
  sayOwnWordsOnly(provider, awareness);
  provider.on('connection-close', () => {
    // The provider waits for the lesser of its own, doubling wait and this: half to all of it, by chance.
    const wait = Math.min(2 ** (provider.wsUnsuccessfulReconnects + 1) * 100, LIMITS.longestRetryWait);
    provider.maxBackoffTime = wait * (0.5 + random() / 2);
  });
  return provider;
}

/** The stock provider writes down everybody's every word to repeat it; ours alone are worth that (P3). */
function sayOwnWordsOnly(provider: WebsocketProvider, awareness: Awareness): void {
  const { clientID: own } = awareness;
  const repeat = provider._awarenessUpdateHandler;
  awareness.off('update', repeat);
  awareness.on('update', (changes: Record<'added' | 'updated' | 'removed', number[]>, origin: unknown) => {
    if (!Object.values(changes).some((clients) => clients.includes(own))) return;
    repeat({ added: [], updated: [own], removed: [] }, origin);
  });
}
