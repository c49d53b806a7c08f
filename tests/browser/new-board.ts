import type { BrowserContextOptions, Page } from 'playwright-core';
import type { CountedHand } from './counted-hand.ts';
import { type Person, person } from './served-board.ts';
import type { Stage } from './stage.ts';

/** Lets a file from the disk go over a place of the page, as a hand does that carries it there. */
export async function dropFile(page: Page, over: string, file: string): Promise<void> {
  const box = await page.locator(over).boundingBox();
  if (!box) throw new Error(`nothing at ${over}`);
  const input = await page.context().newCDPSession(page);
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const) {
    await input.send('Input.dispatchDragEvent', {
      type,
      x: box.x + box.width / 2,
      y: box.y + box.height / 2,
      data: { items: [], files: [file], dragOperationsMask: 1 },
    });
  }
  await input.detach();
}

/** Somebody of this name on the start page. */
export async function visitor(stage: Stage, name: string, options: BrowserContextOptions = {}): Promise<Person> {
  return person(stage.browser, stage.served.address, name, { acceptDownloads: true, ...options });
}

/** How a picture comes along: carried over the page and let go, or chosen from a list of files. */
export type Bringing = 'dropped' | 'chosen';

/** A board from its name, in metres, for eighteen holes, with a picture of the site. */
export async function boardFromPicture(
  hand: CountedHand,
  name: string,
  picture: string,
  bringing: Bringing,
): Promise<void> {
  const { page } = hand;
  await hand.on(page.getByLabel('Name of the site'));
  await hand.type(name);
  await hand.on(page.getByRole('radio', { name: 'Metres' }));
  await hand.on(page.getByRole('radio', { name: '18 holes' }));
  if (bringing === 'dropped') {
    await page.locator('.drop').scrollIntoViewIfNeeded();
    await dropFile(page, '.drop', picture);
  } else {
    const chooser = page.waitForEvent('filechooser');
    await hand.on(page.getByRole('button', { name: 'Choose a picture' }));
    await (await chooser).setFiles(picture);
  }
  await page.getByText('laid on the board as soon as it is open').waitFor();
  await hand.on(page.getByRole('button', { name: 'Make the board' }));
  await pictureLaid(page);
}

/** Until the picture lies on the board and the instruments are there. */
export async function pictureLaid(page: Page): Promise<void> {
  await page.getByRole('toolbar', { name: 'Instruments' }).waitFor();
  await page.getByRole('complementary', { name: 'Not to scale yet' }).waitFor();
}
