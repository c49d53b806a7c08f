// An aerial of 60 megapixels, drawn in the browser: fields, a track and some grain, so that it does not pack to nothing.
import { createHash } from 'node:crypto';
import type { ImageLayer, Plan } from '@loopwright/model';
import type { Browser, Page } from 'playwright-core';
import { enter } from '../faults/page.ts';

const WIDTH = 10_000;
const HEIGHT = 6_000;
/** Metres of ground in a pixel. */
const PIXEL = 0.3;

export interface LargeImage {
  readonly bytes: Buffer;
  readonly hash: string;
}

export async function drawLargeImage(browser: Browser): Promise<LargeImage> {
  const page = await browser.newPage();
  const text = await page.evaluate(
    async ([width, height]) => {
      const canvas = new OffscreenCanvas(width, height);
      const pen = canvas.getContext('2d');
      if (!pen) throw new Error('no pen for so large a canvas');
      const grain = new ImageData(256, 256);
      for (let at = 0; at < grain.data.length; at++) grain.data[at] = 90 + ((at * 7919) % 97);
      const tile = new OffscreenCanvas(256, 256);
      tile.getContext('2d')?.putImageData(grain, 0, 0);
      pen.fillStyle = pen.createPattern(tile, 'repeat') ?? '#888';
      pen.fillRect(0, 0, width, height);
      for (let field = 0; field < 300; field++) {
        pen.fillStyle = `hsla(${(field * 37) % 140}, 30%, 50%, 0.5)`;
        pen.fillRect((field * 977) % width, (field * 613) % height, 700, 500);
      }
      const bytes = new Uint8Array(
        await (await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.7 })).arrayBuffer(),
      );
      let letters = '';
      for (let at = 0; at < bytes.length; at += 8192) letters += String.fromCharCode(...bytes.subarray(at, at + 8192));
      return btoa(letters);
    },
    [WIDTH, HEIGHT] as const,
  );
  await page.close();
  const bytes = Buffer.from(text, 'base64');
  return { bytes, hash: createHash('sha256').update(bytes).digest('hex') };
}

/** The plan with the image beneath it, at 30 cm to the pixel. */
export function overImage(plan: Plan, { hash }: LargeImage): Plan {
  const image: ImageLayer = {
    id: 'aerial',
    blob: hash,
    widthPixels: WIDTH,
    heightPixels: HEIGHT,
    placement: [PIXEL, 0, -200, 0, -PIXEL, 1500],
    opacity: 1,
  };
  return { ...plan, site: { ...plan.site, images: [image] } };
}

/** Brings the image to a board, as somebody who is on it. */
export async function bringImage(where: Parameters<typeof enter>[0], { bytes }: LargeImage): Promise<void> {
  const { cookie } = await enter(where, 'Surveyor');
  const answer = await fetch(`http://${where.address}/api/boards/${where.board}/blobs`, {
    method: 'POST',
    headers: { 'content-type': 'image/jpeg', cookie, origin: `http://${where.address}` },
    body: new Uint8Array(bytes),
  });
  if (!answer.ok) throw new Error(`the image was refused: ${answer.status} ${await answer.text()}`);
}

/** Until something of the picture is painted in the middle of the lowest layer. */
export async function pictureSeen(page: Page): Promise<void> {
  await page.waitForFunction(
    () => {
      const canvas = document.querySelector<HTMLCanvasElement>('[data-testid=drawing] canvas');
      const middle = canvas?.getContext('2d')?.getImageData(canvas.width / 2, canvas.height / 2, 1, 1).data;
      return middle !== undefined && middle[3] !== 0;
    },
    undefined,
    { polling: 100 },
  );
}
