/** One image in ever smaller halves: the whole site is drawn from few pixels, a green from all of them. */
export type Pyramid = readonly CanvasImageSource[];

/** Smaller than this a half is not worth keeping, in pixels. */
const SMALLEST = 512;

/** Halves an image until it is small. Runs once per image, after it has loaded. */
export function makePyramid(image: HTMLImageElement): Pyramid {
  const levels: CanvasImageSource[] = [image];
  let [from, width, height]: [CanvasImageSource, number, number] = [image, image.naturalWidth, image.naturalHeight];
  while (Math.max(width, height) > SMALLEST) {
    const half = document.createElement('canvas');
    half.width = Math.max(1, width >> 1);
    half.height = Math.max(1, height >> 1);
    const pen = half.getContext('2d');
    if (!pen) break;
    pen.imageSmoothingQuality = 'high';
    pen.drawImage(from, 0, 0, half.width, half.height);
    levels.push(half);
    [from, width, height] = [half, half.width, half.height];
  }
  return levels;
}

/** The smallest level that is still sharp. @param share  screen pixels for each pixel of the full image */
export function levelFor(pyramid: Pyramid, share: number): CanvasImageSource | undefined {
  const wanted = share >= 1 ? 0 : Math.floor(-Math.log2(share));
  return pyramid[Math.max(0, Math.min(pyramid.length - 1, wanted))];
}
