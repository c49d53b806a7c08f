import { connect, type Socket } from 'node:net';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openTestServer, type TestServer } from '../testing/open-test-server.ts';

let open: TestServer;
let port: number;
beforeEach(async () => {
  open = await openTestServer();
  port = Number(new URL(await open.server.http.listen({ host: '127.0.0.1', port: 0 })).port);
});
afterEach(() => open.server.close());

const asking = (path: string, origin: string) =>
  [
    `GET ${path} HTTP/1.1`,
    `Host: 127.0.0.1:${port}`,
    `Origin: ${origin}`,
    'Connection: Upgrade',
    'Upgrade: websocket',
    'Sec-WebSocket-Version: 13',
    'Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==',
    '\r\n',
  ].join('\r\n');

/** Connects, asks for a socket, and does something with the connection; kept once it is closed. */
function ask(path: string, origin: string, then: (socket: Socket) => void): Promise<void> {
  return new Promise((resolve) => {
    const socket = connect({ port, host: '127.0.0.1', allowHalfOpen: true });
    socket.on('error', () => undefined);
    socket.once('close', () => resolve());
    socket.once('connect', () => {
      socket.write(asking(path, origin));
      then(socket);
    });
  });
}

test('whoever resets the connection while being turned away does the server no harm', async () => {
  const elsewhere = 'https://evil.example';
  for (let round = 0; round < 20; round++) {
    await ask('/anywhere', elsewhere, (socket) => socket.resetAndDestroy());
    await ask('/sync/b1/m1/plan', elsewhere, (socket) => setImmediate(() => socket.resetAndDestroy()));
    await ask('/sync/b1/m1/plan', `http://127.0.0.1:${port}`, (socket) => setImmediate(() => socket.resetAndDestroy()));
  }
  expect((await fetch(`http://127.0.0.1:${port}/healthz`)).status).toBe(200);
});

test('a connection that was turned away is not kept open for a client that never closes its end', async () => {
  await ask('/anywhere', 'https://evil.example', (socket) => socket.once('data', () => socket.end()));
  expect(await connections()).toBe(0);
  let held: Socket | undefined;
  const answered = new Promise((resolve) => {
    void ask('/anywhere', 'https://evil.example', (socket) => {
      held = socket;
      socket.on('data', resolve);
    });
  });
  await answered;
  expect(await connections()).toBe(0);
  held?.destroy();
});

function connections(): Promise<number> {
  return new Promise((resolve, reject) => {
    open.server.http.server.getConnections((failure, count) => (failure ? reject(failure) : resolve(count)));
  });
}
