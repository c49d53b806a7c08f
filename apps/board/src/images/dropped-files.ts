import { imageTypeOf, TYPE_BYTES } from '@loopwright/formats/image';

/** Dropped, pasted or chosen files by what they are for. */
export interface DroppedFiles {
  /** To be laid under the plan, or refused in words: also what only calls itself a picture. */
  readonly pictures: readonly File[];
  readonly worldFiles: readonly File[];
  /** Courses, boards, features. */
  readonly others: readonly File[];
}

/** Endings of world files: of PNG, JPEG, TIFF and WebP, and the one for all. */
const WORLD_FILE = /\.(pgw|pngw|jgw|jpgw|jpegw|tfw|tifw|wpw|webpw|wld)$/i;
const CALLED_PICTURE = /\.(png|jpe?g|webp|gif|bmp|tiff?|heic|avif|pdf)$/i;

/** Sorts files by their first bytes, and by name where those say nothing. */
export async function sortFiles(files: readonly File[]): Promise<DroppedFiles> {
  const sorted = { pictures: [] as File[], worldFiles: [] as File[], others: [] as File[] };
  for (const file of files) sorted[await kindOf(file)].push(file);
  return sorted;
}

async function kindOf(file: File): Promise<keyof DroppedFiles> {
  if (WORLD_FILE.test(file.name)) return 'worldFiles';
  const first = await file
    .slice(0, TYPE_BYTES)
    .arrayBuffer()
    .catch(() => new ArrayBuffer(0)); // a folder, or gone meanwhile
  if (imageTypeOf(new Uint8Array(first))) return 'pictures';
  return CALLED_PICTURE.test(file.name) || file.type.startsWith('image/') ? 'pictures' : 'others';
}

/** The world file that goes with a picture: of the same name, or the only one beside the only picture. */
export function worldFileFor(picture: File, { pictures, worldFiles }: DroppedFiles): File | undefined {
  const stem = stemOf(picture.name);
  const named = worldFiles.find(({ name }) => stemOf(name) === stem);
  return named ?? (pictures.length === 1 && worldFiles.length === 1 ? worldFiles[0] : undefined);
}

const stemOf = (name: string) => name.replace(/(\.(png|jpe?g|tiff?|webp))?\.[^.]+$/i, '').toLowerCase();
