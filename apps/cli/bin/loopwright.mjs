#!/usr/bin/env node
import { existsSync } from 'node:fs';

const built = new URL('../dist/main.js', import.meta.url);
const builder = await import('../../server/build.mjs').catch(() => undefined);
if (builder?.isStale('cli') ?? false) {
  // A program that reads standard error gets nothing but the one sentence about its file.
  if (process.stderr.isTTY) console.error('Building the command line …');
  await builder.buildTargets(['cli'], { log: () => undefined }).catch(() => undefined);
}
if (!existsSync(built)) {
  console.error('The command line is not built and could not be: run `npm ci`, then `npm run build`, and try again.');
  process.exit(70);
}
await import(built.href);
