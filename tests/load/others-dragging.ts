// People without screens, each dragging a green of their own at 25 a second over a plain socket: what comes in is left
// unread. Started as a process of its own, so that its work is not the page's; ends with whoever started it.
import { encodeFrame, encodePresence, parseFrame } from '@loopwright/protocol';
import WebSocket from 'ws';

/** One person: where they join, and the edit their drag would make about a place. */
export interface Dragger {
  readonly url: string;
  readonly cookie: string;
  readonly routing: string;
  readonly hole: string;
  readonly about: { readonly x: number; readonly y: number };
}

const EVERY = 40;
const REACH = 20;
/** The document of somebody who has nothing: an update of no changes. */
const NOTHING = Uint8Array.of(0, 0);

async function joined({ url, cookie }: Dragger): Promise<WebSocket> {
  const socket = new WebSocket(url, { headers: { cookie }, perMessageDeflate: false });
  socket.binaryType = 'nodebuffer';
  return new Promise((resolve, reject) => {
    socket.once('error', reject);
    socket.on('message', (data: Buffer) => {
      if (parseFrame(data).kind !== 'step 1') return;
      socket.removeAllListeners('message');
      socket.send(encodeFrame({ kind: 'step 2', update: NOTHING }));
      resolve(socket);
    });
  });
}

function drag(socket: WebSocket, { routing, hole, about }: Dragger, index: number): void {
  let tick = 0;
  setInterval(() => {
    tick += 1;
    const to = {
      x: Math.round(1000 * (about.x + REACH * Math.sin(tick / 9 + index))) / 1000,
      y: Math.round(1000 * (about.y + REACH * Math.cos(tick / 7 + index))) / 1000,
    };
    const edit = { edit: 'move part', routing, hole, part: 'green', to };
    const state = { pointer: to, selection: [hole], routing, drag: edit };
    const presence = encodePresence([{ client: 1000 + index, clock: tick, state }]);
    socket.send(encodeFrame({ kind: 'presence', presence }));
  }, EVERY);
}

async function main(): Promise<void> {
  const draggers: readonly Dragger[] = JSON.parse(process.argv[2] ?? '[]');
  process.on('disconnect', () => process.exit(0));
  const sockets = await Promise.all(draggers.map(joined));
  // Not in step: each begins at a moment of its own.
  for (const [index, dragger] of draggers.entries()) {
    const socket = sockets[index];
    if (socket) setTimeout(() => drag(socket, dragger, index), (index * EVERY) / draggers.length);
  }
  process.send?.('dragging');
}

await main();
