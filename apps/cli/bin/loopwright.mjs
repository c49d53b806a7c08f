#!/usr/bin/env node
import { existsSync } from 'node:fs';

const built = new URL('../dist/main.js', import.meta.url);
if (!existsSync(built)) {
  // A program that reads standard error gets nothing but the one sentence about its file.
  if (process.stderr.isTTY) console.error('Building the command line once …');
  const { buildTargets } = await import('../../server/build.mjs');
  try {
    await buildTargets(['cli'], { log: () => undefined });
  } catch {
    console.error('The command line is not built and could not be: run `npm ci`, then `npm run build`, and try again.');
    process.exit(70);
  }
}
await import(built.href);
