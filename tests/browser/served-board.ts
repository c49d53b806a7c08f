// One built server with its own empty data folder, and one Chromium, for the browser tests.
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { troublesOf } from './troubles.ts';

/** The server as it is built, or another build of it. */
const SERVER = process.env.SERVER_PATH ?? resolve(import.meta.dirname, '../../apps/server/dist/main.js');
const CHROMIUM_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A port nobody listens on right now. */
async function freePort(): Promise<number> {
  return new Promise((settle, fail) => {
    const probe = createServer();
    probe.once('error', fail);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => (address && typeof address === 'object' ? settle(address.port) : fail(new Error('no port'))));
    });
  });
}

/** Resolves once the server answers that it is ready, by asking it; rejects when it ends first. */
async function untilReady(address: string, child: ChildProcess): Promise<void> {
  for (;;) {
    if (child.exitCode !== null) throw new Error(`the server ended with ${child.exitCode}`);
    const answer = await fetch(`${address}/readyz`).catch(() => undefined);
    if (answer?.ok) return;
    await new Promise((settle) => setImmediate(settle));
  }
}

export interface Served {
  readonly address: string;
  /** Ends the server as a power cut would. */
  kill(): Promise<void>;
  /** Starts it again on the same data and address. */
  restart(): Promise<void>;
  close(): Promise<void>;
}

export async function serve(): Promise<Served> {
  const data = mkdtempSync(join(tmpdir(), 'loopwright-browser-'));
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  let child: ChildProcess | undefined;

  const start = async () => {
    child = spawn(process.execPath, [SERVER], {
      env: { ...process.env, PORT: String(port), HOST: '127.0.0.1', DATA_DIR: data },
      stdio: 'ignore',
    });
    await untilReady(address, child);
  };
  const end = async (signal: 'SIGKILL' | 'SIGTERM') => {
    const ending = child;
    if (!ending || ending.exitCode !== null) return;
    const gone = new Promise((settle) => ending.once('exit', settle));
    ending.kill(signal);
    await gone;
  };

  await start();
  return {
    address,
    kill: () => end('SIGKILL'),
    restart: start,
    close: async () => {
      await end('SIGTERM');
      rmSync(data, { recursive: true, force: true });
    },
  };
}

export async function openBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium', args: CHROMIUM_FLAGS });
}

/** A board holding this plan (the server's empty one if undefined); its link. */
export async function makeBoard(served: Served, plan?: unknown): Promise<string> {
  const answer = await fetch(`${served.address}/api/boards`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: served.address },
    body: JSON.stringify(plan === undefined ? { name: 'Empty' } : { plan }),
  });
  const made: unknown = await answer.json();
  if (!answer.ok || typeof made !== 'object' || made === null || !('link' in made)) {
    throw new Error(`no board was made: ${answer.status} ${JSON.stringify(made)}`);
  }
  return new URL(String(made.link), served.address).href;
}

/** Somebody of this name with the board open in a browser of their own. */
export async function person(
  browser: Browser,
  link: string,
  name: string,
  options: BrowserContextOptions = {},
): Promise<Person> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
  const troubles = troublesOf(context);
  await called(context, name);
  const page = await context.newPage();
  await page.goto(link);
  return { context, page, troubles };
}

/** The pages of a context know this name from before. */
export async function called(context: BrowserContext, name: string): Promise<void> {
  await context.addInitScript((words) => {
    // A page that is still empty keeps nothing.
    if (location.protocol === 'http:') localStorage.setItem('loopwright name', words);
  }, name);
}

export interface Person {
  readonly context: BrowserContext;
  readonly page: Page;
  /** @see troublesOf */
  readonly troubles: readonly string[];
}
