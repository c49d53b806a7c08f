import { courseAnswers } from './answer.ts';
import type { Answer, Numbered, Question } from './contract.ts';

const answer = courseAnswers();

self.onmessage = async ({ data }: MessageEvent<Numbered<Question>>) => {
  const content: Answer = await answer(data.content);
  self.postMessage({ number: data.number, content });
};
