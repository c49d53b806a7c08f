import { mkdir } from 'node:fs/promises';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openAccess } from './access/access.ts';
import { machineChance } from './access/secrets.ts';
import { buildServer, type LoopwrightServer } from './build-server.ts';
import { systemClock } from './clock.ts';
import { demoBoard } from './demo/demo-board.ts';
import { type Environment, readEnvironment } from './environment.ts';
import { SERVER_LIMITS } from './limits.ts';
import { jsonLog, reasonOf } from './log.ts';
import type { ServerPorts } from './ports.ts';
import { openFileBlobs } from './storage/blobs.ts';
import { type HeldFolder, takeFolder } from './storage/folder-lock.ts';
import { openSqliteStore } from './storage/sqlite.ts';

const say = (line: string) => process.stdout.write(`${line}\n`);

function stop(sentence: string): never {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}

/** Makes the directory of data when it is missing, and takes it for this process. */
async function holdFolder({ dataDirectory }: Environment): Promise<HeldFolder> {
  await mkdir(dataDirectory, { recursive: true });
  return (
    takeFolder(dataDirectory) ??
    stop(
      `Another Loopwright server has the boards in ${dataDirectory} open: use that one or stop it, or choose another place with DATA_DIR (and another PORT).`,
    )
  );
}

async function openPorts({ dataDirectory, publicUrl }: Environment): Promise<ServerPorts> {
  const store = await openSqliteStore(join(dataDirectory, 'loopwright.sqlite'));
  const blobs = await openFileBlobs(join(dataDirectory, 'blobs'));
  return {
    store,
    blobs,
    access: openAccess({ store, clock: systemClock, chance: machineChance }),
    clock: systemClock,
    log: jsonLog((line) => process.stderr.write(line), systemClock.now),
    limits: SERVER_LIMITS,
    pageDirectory: fileURLToPath(new URL('../../board/dist', import.meta.url)),
    ...(publicUrl === undefined ? {} : { publicUrl }),
  };
}

/** Listens, or says in one sentence why not. */
async function listen(server: LoopwrightServer, { host, port }: Environment): Promise<number> {
  try {
    await server.http.listen({ host, port });
  } catch (failure) {
    await server.close();
    const busy = failure instanceof Error && 'code' in failure && failure.code === 'EADDRINUSE';
    if (busy) stop(`Port ${port} is in use: stop what uses it, or choose another, e.g. PORT=${port + 1} npm start.`);
    stop(`The server cannot listen at ${host}:${port}: ${reasonOf(failure)}`);
  }
  const address = server.http.server.address();
  return typeof address === 'object' && address !== null ? address.port : port;
}

function closeOnSignals(server: LoopwrightServer, folder: HeldFolder): void {
  const close = () => {
    say('Closing the boards …');
    server.close().then(
      () => {
        folder.release();
        process.exit(0);
      },
      (failure: unknown) => stop(`The server did not close cleanly: ${reasonOf(failure)}`),
    );
  };
  process.once('SIGTERM', close);
  process.once('SIGINT', close);
}

/** Where other machines on the same network find this one. */
function localAddresses(): readonly string[] {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .flatMap(({ address, family, internal }) => (family === 'IPv4' && !internal ? [address] : []));
}

async function main(): Promise<void> {
  const read = readEnvironment(process.env);
  if (read.kind === 'unusable') stop(read.why);
  const { environment } = read;
  const cannotOpen = (failure: unknown) =>
    stop(
      `The boards in ${environment.dataDirectory} cannot be opened: ${reasonOf(failure)}. Choose another place with DATA_DIR.`,
    );
  const folder = await holdFolder(environment).catch(cannotOpen);
  const ports = await openPorts(environment).catch(cannotOpen);
  say('Opening the boards; on the first run the demo is drawn, which takes some seconds …');
  const demo = await demoBoard(ports, environment.dataDirectory).catch((failure: unknown) =>
    stop(
      `The demo board cannot be made in ${environment.dataDirectory}: ${reasonOf(failure)}. Make room there, then start again.`,
    ),
  );
  const server = await buildServer(ports);
  const port = await listen(server, environment);
  closeOnSignals(server, folder);
  const address = environment.publicUrl ?? `http://localhost:${port}`;
  say(`Loopwright is running at ${address}`);
  if (environment.host === '0.0.0.0' && environment.publicUrl === undefined)
    for (const near of localAddresses()) say(`From another machine on this network: http://${near}:${port}`);
  say(`Demo board: ${address}/b/${demo.board}#${demo.secret}`);
}

await main();
