import { type ImageHeader, type ImageLimits, imageFaultSentence, readImage } from '@loopwright/formats/image';
import type { Answer, ReadyPicture } from './contract.ts';

/** What the browser can do with a picture; tests bring their own. */
export interface PictureTools {
  /** Decodes all of it and answers its size as it is shown. Breaks its promise at a file it cannot decode. */
  decodedSize(file: Blob): Promise<{ readonly width: number; readonly height: number }>;
  /** The same picture with 8 bits and three colours, upright. Breaks its promise where this machine cannot. */
  convert(file: Blob, type: 'image/png' | 'image/jpeg'): Promise<Blob>;
  hash(file: Blob): Promise<string | undefined>;
}

const NOT_READ = 'This file can no longer be read from the disk: drop it again.';
const NOT_DECODED =
  'This picture is damaged, or too large for this machine to decode: export it again, or save it smaller.';
const NOT_CONVERTED =
  'This machine could not turn this picture into one that every browser shows: save it with 8 bits a colour, as RGB and upright.';

/**
 * Why a picture is not kept as it is. Four inks and 16 bits are shown differently, or with twice the memory, by other
 * browsers; the orientation of a PNG or WebP is followed by some and by some not. A JPEG's all of them follow.
 */
function reasonToConvert(header: ImageHeader): string | undefined {
  if (header.inks) return 'its four inks (CMYK) were turned into three colours';
  if (header.bits > 8) return 'its 16 bits a colour were turned into 8';
  if (header.orientation !== 1 && header.type !== 'image/jpeg')
    return 'it was saved anew as it is shown here, for not every browser turns it alike';
  return undefined;
}

/**
 * Looks at a picture before anything of it leaves this machine: its header first, then whether it decodes.
 * Nothing is decoded whose header asks for too much.
 *
 * @param tell  hears what is being done
 */
export async function checkPicture(
  file: Blob,
  limits: ImageLimits,
  tools: PictureTools,
  tell: (answer: Answer) => void,
): Promise<Answer> {
  const refused = (why: string): Answer => ({ kind: 'refused', why });
  tell({ kind: 'doing', doing: 'reading' });
  const reading = await readImage(sourceOf(file), limits).catch(() => undefined);
  if (!reading) return refused(NOT_READ);
  if (reading.kind === 'fault') return refused(imageFaultSentence(reading.fault, limits));
  const { header } = reading;
  const converted = reasonToConvert(header);
  tell({ kind: 'doing', doing: converted ? 'converting' : 'decoding' });
  const kept = converted ? await tools.convert(file, typeAfter(header)).catch(() => undefined) : file;
  if (!kept) return refused(NOT_CONVERTED);
  if (kept.size > limits.mostImageBytes) return refused(imageFaultSentence('too many bytes', limits));
  const size = await tools.decodedSize(kept).catch(() => undefined);
  if (!size) return refused(NOT_DECODED);
  if (size.width * size.height > limits.mostImagePixels) return refused(imageFaultSentence('too many pixels', limits));
  const hash = await tools.hash(kept).catch(() => undefined); // for want of memory, say: the server works it out too
  const picture: ReadyPicture = {
    file: kept,
    type: converted ? typeAfter(header) : header.type,
    widthPixels: size.width,
    heightPixels: size.height,
    orientation: header.orientation,
    ...(hash === undefined ? {} : { hash }),
    ...(converted === undefined ? {} : { converted }),
  };
  return { kind: 'ready', picture };
}

/** A drawing stays without loss; a photograph in four inks is one. */
const typeAfter = ({ inks, type }: ImageHeader) => (inks || type === 'image/jpeg' ? 'image/jpeg' : 'image/png');

const sourceOf = (file: Blob) => ({
  size: file.size,
  read: async (at: number, length: number) => new Uint8Array(await file.slice(at, at + length).arrayBuffer()),
});
