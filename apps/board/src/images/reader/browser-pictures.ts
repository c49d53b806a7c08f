import type { PictureTools } from './check-picture.ts';

const decode = (file: Blob) => createImageBitmap(file, { imageOrientation: 'from-image' });

/** Of a converted photograph: what is lost cannot be seen. */
const QUALITY = 0.95;

/** Pictures by the browser's own decoder and canvas, in a worker. */
export const browserPictures: PictureTools = {
  async decodedSize(file) {
    const pixels = await decode(file);
    const { width, height } = pixels;
    pixels.close();
    return { width, height };
  },
  async convert(file, type) {
    const pixels = await decode(file);
    try {
      const canvas = new OffscreenCanvas(pixels.width, pixels.height);
      const pen = canvas.getContext('2d');
      if (!pen) throw new Error('this browser gives no canvas of that size');
      pen.drawImage(pixels, 0, 0);
      return await canvas.convertToBlob({ type, quality: QUALITY });
    } finally {
      pixels.close();
    }
  },
  async hash(file) {
    // Only of a page that came over TLS or from this machine; elsewhere the server's own hash has to do.
    if (!('subtle' in crypto)) return undefined;
    const digest = await crypto.subtle.digest('SHA-256', await file.arrayBuffer());
    return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  },
};
