import { LARGEST_COURSE_FILE, readFeatures, tooLargeSentence } from '@loopwright/formats';
import { freshId } from '../../reading/fresh-id.ts';
import type { Answer, Question } from './contract.ts';

self.onmessage = async ({ data }: MessageEvent<Question>) => {
  self.postMessage(await answered(data));
};

async function answered({ file, site, coordinates }: Question): Promise<Answer> {
  if (file.size > LARGEST_COURSE_FILE) return { kind: 'unreadable', why: tooLargeSentence(file.size) };
  return readFeatures(await file.text(), site, { freshId, ...(coordinates ? { coordinates } : {}) });
}
