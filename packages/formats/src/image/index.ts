export type { ByteSource } from './byte-source.ts';
export { bytesAsSource } from './byte-source.ts';
export { imageFaultSentence } from './image-fault-words.ts';
export type { ImageFault, ImageHeader, ImageLimits, ImageReading, ImageType } from './image-header.ts';
export { imageTypeOf, readImage, TYPE_BYTES } from './read-image.ts';
