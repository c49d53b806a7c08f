// Files as people have them, dropped on the start page: what becomes a board, and what is answered in one sentence.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeEach, expect, test } from 'vitest';
import { boardShown } from './board-page.ts';
import { openStage } from './stage.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const sample = (name: string) => join(ROOT, 'tests/samples', name);
const WITHIN = { timeout: 15_000, interval: 50 };
const folder = mkdtempSync(join(tmpdir(), 'loopwright-files-'));

const stage = openStage();
let context: BrowserContext;
let page: Page;
afterAll(() => rmSync(folder, { recursive: true, force: true }));
beforeEach(async () => {
  context = await stage.browser.newContext({ viewport: { width: 1440, height: 900 }, acceptDownloads: true });
  await context.addInitScript(() => localStorage.setItem('loopwright name', 'Ada'));
  page = await context.newPage();
  await page.goto(stage.served.address);
});
afterEach(async () => {
  await context.close();
});

async function chooseFile(file: string): Promise<void> {
  await page.locator('input[accept*=geojson]').setInputFiles(file);
}

async function makeTheBoard(): Promise<void> {
  await page.getByRole('button', { name: 'Make the board' }).click();
  await boardShown(page);
}

/** Number, par and length of every hole as the round shows them, in metres. */
async function holesOfRound(): Promise<readonly (readonly [number, number])[]> {
  await page.getByText('metres', { exact: true }).first().click();
  const said = await page
    .locator('li[data-slot="bead"]')
    .evaluateAll((beads) =>
      beads.map((bead) => [
        Number(bead.querySelector('.bead__par')?.textContent?.replace('par ', '')),
        Number(bead.querySelector('.bead__length')?.childNodes[0]?.textContent),
      ]),
    );
  return said.map(([par = Number.NaN, length = Number.NaN]) => [par, length] as const);
}

/** The report of the same file by the command line. */
function reportOf(file: string): {
  holes: { par: { men: number }; teeSets: Record<string, { lengthMetres: number }> }[];
} {
  const { stdout, status, stderr } = spawnSync(
    process.execPath,
    [join(ROOT, 'apps/cli/bin/loopwright.mjs'), 'report', file, '--format', 'json'],
    { encoding: 'utf8' },
  );
  expect(status, stderr).toBe(0);
  return JSON.parse(stdout);
}

test('a course file becomes a board whose figures are those of the report', async () => {
  await chooseFile(sample('clean.geojson'));
  await makeTheBoard();
  const shown = await holesOfRound();
  const reported = reportOf(sample('clean.geojson')).holes.map(
    ({ par, teeSets }) => [par.men, Math.round(Object.values(teeSets)[0]?.lengthMetres ?? Number.NaN)] as const,
  );
  expect(reported.length).toBeGreaterThan(0);
  expect(shown).toEqual(reported);
});

test('what was odd in a file is listed before the board is made', async () => {
  await chooseFile(sample('dirty.geojson'));
  await page.locator('.import__notes li').first().waitFor();
  expect(await page.locator('.import__notes li').count()).toBeGreaterThan(5);
  await makeTheBoard();
});

test('of two courses in one file, one is chosen', async () => {
  await chooseFile(sample('two-courses.geojson'));
  await page.getByText('Which course?').waitFor();
  await page.locator('.import__courses button').nth(1).click();
  await makeTheBoard();
});

test('a board saved as a file comes back the same', async () => {
  await chooseFile(sample('clean.geojson'));
  await makeTheBoard();
  const before = await holesOfRound();
  await page.getByRole('button', { name: /^menu/i }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('menuitem', { name: /as a file/ }).click(),
  ]);
  const saved = join(folder, 'saved.json');
  await download.saveAs(saved);
  await page.goto(stage.served.address);
  await chooseFile(saved);
  await makeTheBoard();
  expect(await holesOfRound()).toEqual(before);
});

const BAD_FILES = [
  { what: 'an empty file', name: 'empty.geojson', text: '' },
  { what: 'a text', name: 'letter.geojson', text: 'Dear architect, here is the course.' },
  { what: 'a file of an unknown version', name: 'later.json', text: '{"loopwright": 99}' },
  { what: 'coordinates beyond the Earth', name: 'far.geojson', text: holeFile('[1e308, 1e308], [1e308, -1e308]') },
  { what: 'a course without holes', name: 'bare.geojson', text: '{"type":"FeatureCollection","features":[]}' },
] as const;

function holeFile(coordinates: string): string {
  return `{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"golf":"hole","ref":"1"},"geometry":{"type":"LineString","coordinates":[${coordinates}]}}]}`;
}

test.each(BAD_FILES)('$what is answered in one sentence, and the page stays up', async ({ name, text }) => {
  const file = join(folder, name);
  writeFileSync(file, text);
  await chooseFile(file);
  const problem = page.getByRole('alert');
  await problem.waitFor();
  expect((await problem.textContent())?.length).toBeGreaterThan(20);
  await chooseFile(sample('clean.geojson'));
  await page.getByRole('button', { name: 'Make the board' }).waitFor();
});

test('a cut-off file and one of 500 MB are refused without being taken in', async () => {
  await chooseFile(sample('truncated.geojson'));
  await page.getByRole('alert').waitFor();
  const huge = join(folder, 'huge.geojson');
  writeFileSync(huge, '');
  truncateSync(huge, 500 * 1024 * 1024);
  await chooseFile(huge);
  await expect.poll(() => page.getByRole('alert').textContent(), WITHIN).toMatch(/MB/);
});

test('a name with a script in it stays a name', async () => {
  await chooseFile(sample('clean.geojson'));
  const name = page.getByLabel('Name of the board');
  await name.fill('<img src=x onerror="document.title=1">Links');
  await makeTheBoard();
  expect(await page.getByText('onerror').count()).toBeGreaterThan(0);
  expect(await page.title()).not.toBe('1');
});

test('a board does not open without its secret, and says so', async () => {
  await chooseFile(sample('clean.geojson'));
  await makeTheBoard();
  const stranger = await stage.browser.newContext();
  await stranger.addInitScript(() => localStorage.setItem('loopwright name', 'Eve'));
  const other = await stranger.newPage();
  const address = new URL(page.url());
  for (const secret of ['', '#wrongwrongwrongwrongwrong']) {
    await other.goto(`${address.origin}${address.pathname}${secret}`);
    await other.getByRole('alert').waitFor();
    expect(await other.getByTestId('board').count()).toBe(0);
    await other.goto('about:blank');
  }
  await stranger.close();
});
