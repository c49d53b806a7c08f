export { changeSentence } from './change-sentence.ts';
export { figuresOf, SAFETY_CAUTION, sentenceOf, severityWord, sourceOf, titleOf } from './sentences.ts';
export type { ReaderNames } from './words.ts';
