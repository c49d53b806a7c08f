import { seededRandom } from '@loopwright/model';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Entry, enter, nameOf, openPage, type Page, someHole } from './page.ts';
import { buildServerOnce, dataDirectory, type RunningServer, startServer } from './running-server.ts';

const ROUNDS = process.env.LONG ? 500 : 50;
const SEED = Number(process.env.SEED ?? 20);
const EDITORS = 3;
/** Milliseconds: a minute, and some seconds a round on a machine with others at work. */
const TIMEOUT = 60_000 + 4000 * ROUNDS;
/** Milliseconds from the first edit to the kill, at most. */
const LONGEST_ROUND = 250;

/** One person who renames one hole again and again: the name is a number that only grows. */
interface Editor {
  /** Of the hole, in id order. */
  readonly place: number;
  issued: number;
  /** The last number that the page was told is saved. */
  acknowledged: number;
}

const numberIn = (name: string | undefined) => Number(/^n(\d+)$/.exec(name ?? '')?.[1] ?? 0);

const data = dataDirectory();
beforeAll(buildServerOnce);
afterAll(data.remove);

/** What the store says after a kill, read through a page that knew nothing before. */
async function checkNothingLost(entry: Entry, editors: readonly Editor[], round: number): Promise<void> {
  const page = openPage(entry);
  await page.until('saved');
  for (const { place, issued, acknowledged } of editors) {
    const stored = numberIn(nameOf(page.plan, place));
    const where = `seed ${SEED}, round ${round}, hole ${place}`;
    expect(stored, `${where}: an acknowledged edit was lost`).toBeGreaterThanOrEqual(acknowledged);
    expect(stored, `${where}: an edit nobody made`).toBeLessThanOrEqual(issued);
  }
  page.close();
}

/** Edits until told to stop: as fast as they are saved, now and then several at once. */
async function editOn(page: Page, editor: Editor, random: () => number): Promise<void> {
  await page.until('saved');
  const { routing, hole } = someHole(page.plan, editor.place);
  const edit = () => {
    editor.issued += 1;
    page.plan.edit({ edit: 'name hole', routing, hole, name: `n${editor.issued}` });
  };
  page.connection.onSaved(() => {
    if (page.connection.saved().kind !== 'saved') return;
    editor.acknowledged = editor.issued;
    for (let more = random() < 0.2 ? 3 : 1; more > 0; more--) setImmediate(edit);
  });
  edit();
}

async function killAmidEdits(server: RunningServer, entry: Entry, editors: readonly Editor[], random: () => number) {
  const pages = editors.map(() => openPage(entry));
  await Promise.all(pages.map((page, index) => editOn(page, editors[index] ?? nobody(), random)));
  await new Promise((resolve) => setTimeout(resolve, random() * LONGEST_ROUND));
  await server.kill();
  for (const page of pages) page.close();
}

function nobody(): never {
  throw new Error('each page has its editor');
}

test(
  `no acknowledged edit is lost in ${ROUNDS} kills at random instants`,
  async () => {
    const random = seededRandom(SEED);
    const editors = Array.from({ length: EDITORS }, (_, place): Editor => ({ place, issued: 0, acknowledged: 0 }));
    let known: Entry | undefined;
    for (let round = 0; round < ROUNDS; round++) {
      const server = await startServer(data.path);
      known ??= await enter(server, 'Ada');
      const entry = { ...known, address: server.address };
      await checkNothingLost(entry, editors, round);
      await killAmidEdits(server, entry, editors, random);
    }
    const server = await startServer(data.path);
    if (known) await checkNothingLost({ ...known, address: server.address }, editors, ROUNDS);
    expect(await server.terminate()).toBe(0);
    expect(Math.min(...editors.map(({ acknowledged }) => acknowledged))).toBeGreaterThan(ROUNDS);
  },
  TIMEOUT,
);
