import { browserPixels } from './browser-pixels.ts';
import type { Answer, Question } from './contract.ts';
import { cutTiles } from './cut-tiles.ts';
import { openLevels } from './levels.ts';

async function fetchImage(address: string): Promise<Blob> {
  const answer = await fetch(address, { credentials: 'same-origin' });
  if (!answer.ok) throw new Error(`the image was answered with ${answer.status}`);
  return answer.blob();
}

const hear = cutTiles({
  open: async (address) => openLevels(await fetchImage(address), browserPixels),
  tell: (answer: Answer) => self.postMessage(answer, { transfer: answer.kind === 'tile' ? [answer.pixels] : [] }),
  later: (milliseconds, work) => {
    const timer = setTimeout(work, milliseconds);
    return () => clearTimeout(timer);
  },
});

self.onmessage = ({ data }: MessageEvent<Question>) => hear(data);
