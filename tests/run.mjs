// `npm test`: installs what is missing, builds, and runs every kind of check one after the other.
// Needs nothing but Node; ends with a plain line 'N passed, N failed'.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const CHROMIUM = process.env.CHROMIUM_PATH ?? ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync);
const scratch = mkdtempSync(join(tmpdir(), 'loopwright-test-'));
const total = { passed: 0, failed: 0, skipped: 0 };

/** Runs a command with its output shown; whether it succeeded. */
function run(command, args, env = {}) {
  const { status, error } = spawnSync(command, args, { stdio: 'inherit', env: { ...process.env, ...env } });
  if (error) console.error(`${command}: ${error.message}`);
  return status === 0;
}

function title(words) {
  console.log(`\n=== ${words} (${new Date().toISOString().slice(11, 19)} UTC)`);
}

/** A check that passes or fails as one. */
function check(words, command, args) {
  title(words);
  const good = run(command, args);
  total[good ? 'passed' : 'failed'] += 1;
  if (!good) console.error(`FAILED: ${words}`);
  return good;
}

/** Test files of some kinds; each test counts. */
function tests(words, projects) {
  title(words);
  const report = join(scratch, `${projects.join('-')}.json`);
  const kinds = projects.flatMap((name) => ['--project', name]);
  const good = run(
    'npx',
    ['vitest', 'run', ...kinds, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    CHROMIUM ? { CHROMIUM_PATH: CHROMIUM } : {},
  );
  if (!existsSync(report)) {
    total.failed += 1;
    return;
  }
  const counted = JSON.parse(readFileSync(report, 'utf8'));
  total.passed += counted.numPassedTests;
  total.failed += counted.numFailedTests;
  total.skipped += counted.numPendingTests + counted.numTodoTests;
  // A file that could not be loaded counts no failed test of its own.
  if (!good && counted.numFailedTests === 0) total.failed += 1;
}

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 11)) {
  console.error(
    `Loopwright needs Node 20.11 or newer; this is ${process.version}. Install a newer Node and try again.`,
  );
  process.exit(1);
}
/** Whether the lock file changed since the packages were last installed. */
function packagesAreMissing() {
  const installed = 'node_modules/.package-lock.json';
  return !existsSync(installed) || statSync('package-lock.json').mtimeMs > statSync(installed).mtimeMs;
}

if (packagesAreMissing()) {
  title('Installing packages');
  const install = () => run('npm', [existsSync('node_modules') ? 'install' : 'ci', '--no-audit', '--no-fund']);
  if (!install() && !install()) {
    console.error('The packages could not be installed: check the connection to your package registry and try again.');
    process.exit(1);
  }
}

check('Types', 'node', ['tests/types.mjs']);
check('Lint and format', 'npx', ['biome', 'check', '.']);
check('Import cycles', 'node', ['tests/cycles.mjs']);
check('Unused files and exports', 'npx', ['knip']);
const built = check('Build', 'node', ['apps/server/build.mjs']);
tests('Unit, published, golden and boundary tests', ['unit', 'published', 'golden', 'boundaries']);
tests('Convergence: many peers, one plan', ['convergence']);
if (built) {
  tests('Faults: a killed server, a failing disk', ['faults']);
  if (CHROMIUM) tests('Browser: two people, one board', ['browser']);
  else {
    total.failed += 1;
    console.error(
      'The browser tests need Chromium: install it (Debian: apt-get install chromium) or set CHROMIUM_PATH.',
    );
  }
} else console.error('The build failed, so the fault and browser tests were not run.');

rmSync(scratch, { recursive: true, force: true });
title('All checks');
console.log(`${total.passed} passed, ${total.failed} failed${total.skipped > 0 ? `, ${total.skipped} skipped` : ''}`);
process.exit(total.failed === 0 ? 0 : 1);
