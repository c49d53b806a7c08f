import type { ImageLayer, Sketch } from '@loopwright/model';

/** The parts of an image as they stand in the document: which pixels is one decision, where they lie another. */
export function partsOfImage(image: ImageLayer): Readonly<Record<string, unknown>> {
  const { blob, widthPixels, heightPixels, placement, opacity, name, scaledBy } = image;
  return { pixels: { blob, widthPixels, heightPixels }, placement, opacity, name, 'scaled-by': scaledBy };
}

/** The parts of a sketch as they stand in the document. One that is not kept need not say so. */
export function partsOfSketch({ shape, by, ink, kept, note }: Sketch): Readonly<Record<string, unknown>> {
  return { shape, drawn: { by, ink }, kept: kept || undefined, note };
}
