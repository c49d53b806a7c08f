// Builds what runs: the page (apps/board/dist), the server (apps/server/dist) and the command line (apps/cli/dist).
//
//   node apps/server/build.mjs [board] [server] [cli] [--stale]
//
// Without names, all three; with --stale, only those older than their sources.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** What is built, the file that shows that it was, and what it is made from besides the packages. */
const TARGETS = {
  board: { says: 'the page', shows: 'apps/board/dist/index.html', from: ['apps/board'] },
  server: { says: 'the server', shows: 'apps/server/dist/main.js', from: ['apps/server'] },
  cli: { says: 'the command line', shows: 'apps/cli/dist/main.js', from: ['apps/cli'] },
};

const NOT_A_SOURCE = new Set(['node_modules', 'dist', 'data', 'fixtures']);
const TEST = /\.(test|bench)\.tsx?$|\.md$/;

/** When the newest source below a directory was written, in milliseconds. */
function newestBelow(directory) {
  let newest = 0;
  for (const entry of readdirSync(directory, { withFileTypes: true })) {
    if (NOT_A_SOURCE.has(entry.name)) continue;
    const path = join(directory, entry.name);
    if (entry.isDirectory()) newest = Math.max(newest, newestBelow(path));
    else if (!TEST.test(entry.name)) newest = Math.max(newest, statSync(path).mtimeMs);
  }
  return newest;
}

/** Whether a target is missing or older than anything it is made from. */
export function isStale(name) {
  const target = TARGETS[name];
  const shows = join(ROOT, target.shows);
  if (!existsSync(shows)) return true;
  const newest = Math.max(...['packages', ...target.from].map((directory) => newestBelow(join(ROOT, directory))));
  return newest > statSync(shows).mtimeMs;
}

/** Builds the named targets, one after the other, saying which. */
export async function buildTargets(names, { log = console.log } = {}) {
  if (names.length === 0) return;
  process.env.NODE_ENV ??= 'production';
  const { build } = await import('vite');
  for (const name of names) {
    const started = Date.now();
    const root = join(ROOT, 'apps', name);
    await build({ root, configFile: join(root, 'vite.config.ts'), logLevel: 'warn' });
    log(`Built ${TARGETS[name].says} in ${((Date.now() - started) / 1000).toFixed(1)} s.`);
  }
}

/** The targets that need building. */
export function staleTargets(names = Object.keys(TARGETS)) {
  return names.filter(isStale);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
  const unknown = asked.find((name) => !(name in TARGETS));
  if (unknown !== undefined) {
    console.error(`There is no '${unknown}' to build; there are ${Object.keys(TARGETS).join(', ')}.`);
    process.exit(2);
  }
  const names = asked.length > 0 ? asked : Object.keys(TARGETS);
  await buildTargets(process.argv.includes('--stale') ? staleTargets(names) : names);
}
