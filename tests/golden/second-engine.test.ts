// Every client must see the same findings, whatever browser it runs in. gjs is SpiderMonkey, Node is V8.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'loopwright-engines-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Debian's SpiderMonkey is older than ES2023: the library's newer names, written out. */
const NEWER_NAMES = 'Array.prototype.toSorted ??= function (order) { return [...this].sort(order); };';

const hasSecondEngine = spawnSync('gjs', ['--version']).status === 0;

/** What the entry prints under an engine. */
function saidBy(engine: string, file: string): string {
  const { stdout, stderr, status } = spawnSync(engine, [file], { encoding: 'utf8', maxBuffer: 256 * 1024 * 1024 });
  if (status !== 0) throw new Error(`${engine} failed: ${stderr}`);
  return stdout.trim();
}

test.skipIf(!hasSecondEngine)(
  'two JavaScript engines give the same figures and findings (needs Debian: gjs)',
  async () => {
    await build({
      configFile: false,
      logLevel: 'error',
      build: {
        outDir: folder,
        emptyOutDir: false,
        minify: false,
        rolldownOptions: { output: { banner: NEWER_NAMES } },
        lib: {
          entry: join(import.meta.dirname, 'second-engine-entry.ts'),
          formats: ['iife'],
          name: 'engine',
          fileName: 'entry',
        },
      },
    });
    const file = join(folder, 'entry.iife.js');
    const v8 = saidBy('node', file);
    const spiderMonkey = saidBy('gjs', file);
    expect(v8.length).toBeGreaterThan(10_000);
    expect(spiderMonkey === v8).toBe(true);
  },
);
