// The plan as a person carries it away: the board file that the menu saves, read back as any program would.
import { readFileSync } from 'node:fs';
import { readCourseFile } from '@loopwright/formats';
import type { Plan } from '@loopwright/model';
import type { Download, Page } from 'playwright-core';

/** Saves the board as a file, by the menu in the head. */
export async function boardFile(page: Page): Promise<Download> {
  await page.getByRole('button', { name: /^menu/i }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('menuitem', { name: /as a file/ }).click(),
  ]);
  return download;
}

/** What the saved file says; whatever it left out or could not read is a failure. */
export async function savedPlan(page: Page): Promise<Plan> {
  const file = await boardFile(page);
  const read = readCourseFile(readFileSync(await file.path(), 'utf8'));
  if (read.kind !== 'board') throw new Error(`not a board file: ${JSON.stringify(read)}`);
  if (read.notes.length > 0) throw new Error(`read with notes: ${JSON.stringify(read.notes)}`);
  return read.plan;
}
