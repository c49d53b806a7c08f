// `npm start`: from a fresh clone to a running board. Plain Node, no dependencies: it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isInstalled } from './installed.mjs';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const OLDEST_NODE = [20, 11];

function stop(sentence) {
  console.error(sentence);
  process.exit(1);
}

function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [leastMajor, leastMinor] = OLDEST_NODE;
  if (major > leastMajor || (major === leastMajor && minor >= leastMinor)) return;
  stop(
    `Loopwright needs Node ${OLDEST_NODE.join('.')} or newer, and this is ${process.versions.node}: ` +
      'install a newer one from https://nodejs.org and run npm start again.',
  );
}

function install() {
  if (isInstalled(ROOT)) return;
  console.log('Installing what Loopwright is made of; the first time takes a minute or two …');
  const npm = process.env.npm_execpath;
  const [command, first] = npm ? [process.execPath, [npm]] : ['npm', []];
  const { status } = spawnSync(command, [...first, 'ci', '--no-fund', '--no-audit'], {
    cwd: ROOT,
    stdio: 'inherit',
    shell: npm === undefined && process.platform === 'win32',
  });
  if (status !== 0) stop('The installation did not finish: see what npm says above, then run npm start again.');
}

async function build() {
  const { buildTargets, staleTargets } = await import('./build.mjs');
  const stale = staleTargets();
  if (stale.length === 0) return;
  console.log(`Building ${stale.join(', ')} …`);
  try {
    await buildTargets(stale);
  } catch (failure) {
    stop(`The build did not finish: ${failure instanceof Error ? failure.message : failure}`);
  }
}

checkNode();
install();
await build();
await import('./dist/main.js');
