// A process of people on one board, with real y-websocket clients. Started by run.mjs, told what to do by messages.
import { encodeFrame, encodePresence, MESSAGE, parseFrame, parsePresence } from '@loopwright/protocol';
import WebSocket from 'ws';
import { WebsocketProvider } from 'y-websocket';
import * as Y from 'yjs';

/** What this process is to do. */
export interface Orders {
  readonly url: string;
  readonly room: string;
  readonly cookie: string;
  readonly people: number;
  readonly draggers: number;
  /** `own words only`: as our page does, other people's presence is not sent back to the server. */
  readonly manners: 'stock' | 'own words only';
}

/** A drag's tick, as long as the page's own: the edit it would make if it ended now. */
const tickOf = (x: number) => ({
  pointer: { x, y: 417.25 },
  selection: ['h4k2m9x1q'],
  routing: 'r4k2m9x1q',
  drag: { edit: 'move part', routing: 'r4k2m9x1q', hole: 'h4k2m9x1q', part: 'green', to: { x, y: 417.25 } },
});

/** The same clock in every process of one machine, in milliseconds. */
const monotonic = () => Number(process.hrtime.bigint() / 1000n) / 1000;

function polyfill({ cookie, manners }: Orders, own: () => number) {
  return class extends WebSocket {
    constructor(url: string, protocols?: string[]) {
      super(url, protocols, { headers: { cookie }, perMessageDeflate: false });
    }
    override send(data: Uint8Array) {
      const frame = manners === 'stock' ? undefined : parseFrame(data);
      if (frame?.kind !== 'presence') return super.send(data);
      const entries = parsePresence(frame.presence);
      const mine = 'kind' in entries ? [] : entries.filter(({ client }) => client === own());
      if (mine.length > 0) super.send(encodeFrame({ kind: 'presence', presence: encodePresence(mine) }));
    }
  };
}

interface Person {
  readonly provider: WebsocketProvider;
  readonly doc: Y.Doc;
}

function join(orders: Orders, seen: (delay: number) => void): Promise<Person> {
  const doc = new Y.Doc();
  const provider = new WebsocketProvider(orders.url, orders.room, doc, {
    disableBc: true,
    // ws and the browser's socket differ in types the provider never uses
    WebSocketPolyfill: polyfill(orders, () => doc.clientID) as unknown as typeof globalThis.WebSocket,
  });
  provider.messageHandlers[MESSAGE.committed] = () => undefined; // the durable count means nothing to a stock client
  provider.awareness.setLocalState({ selection: [] });
  provider.awareness.on('update', ({ updated }: { updated: number[] }) => {
    for (const client of updated) {
      const sentAt = client === doc.clientID ? undefined : provider.awareness.getStates().get(client)?.sentAt;
      if (typeof sentAt === 'number') seen(monotonic() - sentAt);
    }
  });
  return new Promise((resolve) => provider.once('sync', () => resolve({ provider, doc })));
}

async function main(): Promise<void> {
  process.setMaxListeners(1000); // every provider listens for the end of the process
  const orders: Orders = JSON.parse(process.argv[2] ?? '{}');
  let delays: number[] = [];
  const people: Person[] = [];
  for (let i = 0; i < orders.people; i++) people.push(await join(orders, (delay) => delays.push(delay)));
  process.send?.({ kind: 'joined' });

  let ticks: NodeJS.Timeout[] = [];
  const drag = (everyMilliseconds: number) => {
    delays = [];
    ticks = people.slice(0, orders.draggers).map(({ provider }) => {
      let x = 100;
      return setInterval(() => {
        x = Math.round((x + 0.731) * 1000) / 1000;
        provider.awareness.setLocalState({ ...tickOf(x), sentAt: monotonic() });
      }, everyMilliseconds);
    });
  };
  const rest = () => {
    for (const tick of ticks) clearInterval(tick);
    process.send?.({ kind: 'seen', delays });
  };
  process.on('message', (message: { readonly kind: string; readonly every?: number }) => {
    if (message.kind === 'drag') drag(message.every ?? 40);
    if (message.kind === 'rest') rest();
  });
  process.on('disconnect', () => process.exit(0));
}

await main();
