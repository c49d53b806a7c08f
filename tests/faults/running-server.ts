import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const SERVER = fileURLToPath(new URL('../../apps/server', import.meta.url));

/** A directory of data that outlives its servers, and is removed with the test. */
export function dataDirectory(): { readonly path: string; remove(): void } {
  const path = mkdtempSync(join(tmpdir(), 'loopwright-faults-'));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

/** Makes sure that what is tested is what the sources say. */
export function buildServerOnce(): void {
  execFileSync(process.execPath, [join(SERVER, 'build.mjs'), 'server', '--stale'], { stdio: 'inherit' });
}

/** The built server in a process of its own. */
export interface RunningServer {
  readonly address: string;
  /** Of the demo board. */
  readonly board: string;
  readonly secret: string;
  /** Ends it without warning, as a power cut would; kept once it is gone. */
  kill(): Promise<void>;
  /** Asks it to close; kept, with its exit code, once it has. */
  terminate(): Promise<number | null>;
}

/** Starts the built server on this machine alone, on a free port unless one is given. */
export function startServer(data: string, port = '0'): Promise<RunningServer> {
  const server = spawn(process.execPath, [join(SERVER, 'dist', 'main.js')], {
    env: { ...process.env, PORT: port, HOST: '127.0.0.1', DATA_DIR: data, PUBLIC_URL: '' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const gone = new Promise<number | null>((resolve) => server.once('exit', resolve));
  return new Promise((resolve, reject) => {
    let said = '';
    let complained = '';
    server.stderr.on('data', (part) => {
      complained += part;
    });
    server.stdout.on('data', (part) => {
      said += part;
      const [, port, board, secret] = /:(\d+)\/b\/(\w+)#(\S+)\n/.exec(said) ?? [];
      if (port && board && secret)
        resolve(runningServer(server, gone, { address: `127.0.0.1:${port}`, board, secret }));
    });
    server.once('exit', (code) => reject(new Error(`the server ended with ${code} before it ran: ${complained}`)));
  });
}

function runningServer(
  server: ChildProcess,
  gone: Promise<number | null>,
  link: Pick<RunningServer, 'address' | 'board' | 'secret'>,
): RunningServer {
  return {
    ...link,
    async kill() {
      server.kill('SIGKILL');
      await gone;
    },
    terminate() {
      server.kill('SIGTERM');
      return gone;
    },
  };
}
