import type { ImageFault, ImageLimits } from './image-header.ts';

/** One sentence about why a picture was not taken, and what to do; sizes in MB of a million bytes and millions of pixels. */
export function imageFaultSentence(fault: ImageFault, limits: ImageLimits): string {
  const megabytes = Math.floor(limits.mostImageBytes / 1_000_000);
  const megapixels = Math.floor(limits.mostImagePixels / 1_000_000);
  switch (fault) {
    case 'empty':
      return 'There is nothing in this file: fetch or export it again.';
    case 'not an image':
      return 'This is not a picture that can be shown, whatever its name says: save it as PNG, JPEG or WebP.';
    case 'cut off':
      return 'This picture ends in the middle, as if it was cut off on the way: fetch or export it again.';
    case 'no pixels':
      return 'This picture says that it has no pixels: export it again.';
    case 'too many bytes':
      return `This picture is larger than ${megabytes} MB: save it as JPEG, or cut it to the site and its surroundings.`;
    case 'too many pixels':
      return `This picture has more than ${megapixels} million pixels: cut it to the site, or save it smaller.`;
    case 'too long a side':
      return `This picture is longer than ${limits.mostImageSide} pixels: cut it to the site, or save it smaller.`;
    case 'moving':
      return 'This picture moves: save one still picture of it.';
    case 'coding':
      return 'This JPEG is of a kind that browsers do not show (12 bits, lossless or arithmetic): save it as an ordinary JPEG or PNG.';
  }
}
