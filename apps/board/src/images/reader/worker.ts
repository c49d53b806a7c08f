import { LIMITS } from '@loopwright/protocol';
import { browserPictures } from './browser-pictures.ts';
import { checkPicture } from './check-picture.ts';
import type { Answer, Question } from './contract.ts';

self.onmessage = async ({ data }: MessageEvent<Question>) => {
  const tell = (answer: Answer) => self.postMessage(answer);
  tell(await checkPicture(data.file, LIMITS, browserPictures, tell));
};
