// @y/websocket-server as it comes, on a port of its own choice; says which.
import http from 'node:http';
import { createRequire } from 'node:module';
import { setupWSConnection } from '@y/websocket-server/utils';

// The same ws as ours, so that the sockets are equal and the servers alone differ.
const { WebSocketServer } = createRequire(new URL('../../apps/server/package.json', import.meta.url))('ws');
const server = http.createServer();
const sockets = new WebSocketServer({ server });
sockets.on('connection', setupWSConnection);
server.listen(0, '127.0.0.1', () => process.send({ kind: 'listening', port: server.address().port }));
process.on('disconnect', () => process.exit(0));
