import { keepImage } from '../../../offline/keep-image.ts';
import { browserPixels } from './browser-pixels.ts';
import type { Answer, BlobPlace, Question } from './contract.ts';
import { cutTiles } from './cut-tiles.ts';
import { openLevels } from './levels.ts';

async function fetchImage(place: BlobPlace): Promise<Blob> {
  if (typeof place !== 'string') return place;
  const answer = await fetch(place, { credentials: 'same-origin' });
  if (!answer.ok) throw new Error(`the image was answered with ${answer.status}`);
  const image = await answer.blob();
  void keepImage(place, image);
  return image;
}

const hear = cutTiles({
  open: async (place) => openLevels(await fetchImage(place), browserPixels),
  tell: (answer: Answer) => self.postMessage(answer, { transfer: answer.kind === 'tile' ? [answer.pixels] : [] }),
  later: (milliseconds, work) => {
    const timer = setTimeout(work, milliseconds);
    return () => clearTimeout(timer);
  },
});

self.onmessage = ({ data }: MessageEvent<Question>) => hear(data);
