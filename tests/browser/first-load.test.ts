// What a board fetches before it can be used, read from the build itself: no browser, no network.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';

const PAGE = process.env.PAGE_PATH ?? resolve(import.meta.dirname, '../../apps/board/dist');
const ASSETS = join(PAGE, 'assets');
/** Gzipped bytes of script before workers. */
const BUDGET = 400_000;

const readAsset = (name: string): string => readFileSync(join(ASSETS, name), 'utf8');

/** The chunks a chunk cannot start without. */
function importsOf(name: string): readonly string[] {
  const written = /(?:\bfrom|\bimport)\s*["']\.\/([\w.-]+\.js)["']/g;
  return [...readAsset(name).matchAll(written)].flatMap(([, found]) => (found === undefined ? [] : [found]));
}

/** These chunks and all they cannot start without. */
function closureOf(names: readonly string[]): ReadonlySet<string> {
  const closure = new Set<string>();
  const add = (name: string) => {
    if (closure.has(name)) return;
    closure.add(name);
    for (const next of importsOf(name)) add(next);
  };
  for (const name of names) add(name);
  return closure;
}

/** What the page itself names, and the chunk of a board. */
function firstScripts(): ReadonlySet<string> {
  const html = readFileSync(join(PAGE, 'index.html'), 'utf8');
  const named = [...html.matchAll(/\/assets\/([\w.-]+\.js)/g)].map(([, name = '']) => name);
  const board = readdirSync(ASSETS).filter((name) => /^BoardPage-[\w-]+\.js$/.test(name));
  expect(named.length).toBeGreaterThan(0);
  expect(board).toHaveLength(1);
  return closureOf([...named, ...board]);
}

test('a board is there after no more than 400 kB of script, gzipped, before workers', () => {
  const sizes = [...firstScripts()].map((name) => ({ name, bytes: gzipSync(readAsset(name)).length }));
  const total = sizes.reduce((sum, { bytes }) => sum + bytes, 0);
  const largest = sizes
    .sort((a, b) => b.bytes - a.bytes)
    .map(({ name, bytes }) => `${name} ${(bytes / 1000).toFixed(1)}`);
  expect(total, `${(total / 1000).toFixed(1)} kB in all: ${largest.join(', ')}`).toBeLessThanOrEqual(BUDGET);
});

test('instruments, sheets, the hole menu and readers of files wait until somebody asks for them', () => {
  const first = [...firstScripts()].map((name) => basename(name).replace(/-[\w-]{8}\.js$/, ''));
  const later = ['drawing-table', 'HolePanel', 'SitePanel', 'LimitsPanel', 'PointsPanel', 'HoleHandsView', 'worker'];
  const built = readdirSync(ASSETS).map((name) => name.replace(/-[\w-]{8}\.js$/, ''));
  expect(later.filter((name) => !built.includes(name))).toEqual([]);
  expect(later.filter((name) => first.includes(name))).toEqual([]);
});
