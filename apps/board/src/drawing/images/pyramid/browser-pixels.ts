import type { PixelTools } from './levels.ts';

/** Pixels by the browser's own decoder and canvas. */
export const browserPixels: PixelTools<ImageBitmap> = {
  decode: (file) => createImageBitmap(file, { imageOrientation: 'from-image' }),
  sizeOf: ({ width, height }) => ({ width, height }),
  shrink: (pixels, { width, height }) => {
    const canvas = new OffscreenCanvas(width, height);
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('this browser gives no canvas of that size');
    pen.drawImage(pixels, 0, 0, width, height); // at half the size this is the mean of each four pixels
    return canvas.transferToImageBitmap();
  },
  cut: (pixels, left, top, width, height) => createImageBitmap(pixels, left, top, width, height),
  free: (pixels) => pixels.close(),
};
