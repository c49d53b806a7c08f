import type { MapUnit, WorldFile } from '@loopwright/formats/image';
import { type ImageLayer, LIMITS, makeId, parseName } from '@loopwright/model';
import type { Failure, ImportParts, Job, Surroundings } from './import-parts.ts';
import { fileCalled, type ImportStep } from './import-step.ts';
import { GUESSED_WIDTH, laidAbout, laidInView, type Pixels, type Placement } from './placement.ts';
import { readWorldFileOf } from './read-world-file-of.ts';
import type { ReadyPicture } from './reader/contract.ts';
import { asShown } from './world-file-as-shown.ts';
import { imageForWorldFile, layByWorldFile, unitChoices, withGrid } from './world-file-import.ts';

/** One import while it goes on. */
export interface Bringing {
  readonly parts: ImportParts;
  readonly surroundings: Surroundings | undefined;
  readonly signal: AbortSignal;
  readonly show: (step: ImportStep) => void;
  readonly waiting: () => number;
}

const TOO_MANY: Failure = {
  why: `There are ${LIMITS.imageLayers} pictures on this board, and no more fit: remove one, then try again.`,
  again: true,
};
const TOO_SMALL: Failure = { why: 'It would lie too small to be drawn: zoom out, then try again.', again: true };

type Picture = Extract<Job, { kind: 'picture' }>;
type Unit = MapUnit | 'without' | 'called off';

/** Checks a picture, asks what its world file counts in, sends it and lays it. Nothing when it did, or was called off. */
export async function bringPicture(job: Picture, bringing: Bringing): Promise<Failure | undefined> {
  const { parts, signal, show, waiting } = bringing;
  const { name } = job.file;
  if (job.instead === undefined && parts.plan().site.images.length >= LIMITS.imageLayers) return TOO_MANY;
  const checked = await parts.check(
    job.file,
    (doing) => show({ at: 'checking', name, doing, waiting: waiting() }),
    signal,
  );
  if (!checked) return undefined;
  if (checked.kind === 'refused') return { why: checked.why, again: false };
  const { picture } = checked;
  const terms = job.worldFile && (await termsOf(job.worldFile, picture, picture.orientation, bringing));
  const unit = terms && job.worldFile ? await askUnit(terms, picture, job.worldFile.name, bringing) : 'without';
  if (unit === 'called off') return undefined;
  const onProgress = (sent: number, all: number) => show({ at: 'sending', name, sent, all, waiting: waiting() });
  onProgress(0, picture.file.size);
  const sent = await parts.send({ picture, address: parts.address, onProgress, signal });
  if (!sent || signal.aborted) return undefined;
  if (sent.kind === 'refused') return { why: sent.why, again: true };
  const failure =
    job.instead === undefined
      ? lay(picture, sent.hash, { name, terms, unit }, bringing)
      : replace(picture, sent.hash, job, parts);
  if (!failure && picture.converted !== undefined) parts.say(`${fileCalled(name)}: ${picture.converted}.`);
  return failure;
}

/** Lays a picture that is there already by a world file that came alone. */
export async function bringWorldFile(file: File, bringing: Bringing): Promise<Failure | undefined> {
  const { parts } = bringing;
  const image = imageForWorldFile(parts.plan().site.images, parts.chosen(), pictureName(file.name));
  if (!image)
    return { why: 'Which picture is it for? Choose that picture on the sheet Site, then drop it again.', again: false };
  const terms = await termsOf(file, image, 1, bringing);
  if (!terms) return undefined;
  const unit = await askUnit(terms, image, file.name, bringing);
  if (unit === 'called off' || unit === 'without') return undefined;
  const laid = layByWorldFile(terms, image, unit, parts.plan().site);
  if (laid.kind === 'not laid') return { why: laid.why, again: false };
  const name = image.name ?? 'the picture';
  const to = { placement: laid.placement, scaledBy: 'world file' } as const;
  const result = parts.edit(withGrid({ edit: 'change image', image: image.id, to }, laid.grid, name));
  if (result === 'gone') return { why: 'Somebody removed that picture meanwhile.', again: false };
  bringing.surroundings?.showAll();
  return undefined;
}

/** What a world file says of a picture as it is shown; one that cannot be read is told, and the picture comes without. */
async function termsOf(
  file: File,
  pixels: Pixels,
  orientation: number,
  { parts }: Bringing,
): Promise<WorldFile | undefined> {
  const read = await readWorldFileOf(file);
  if (read.kind === 'unreadable') {
    parts.say(`${fileCalled(file.name)}: ${read.why}`);
    return undefined;
  }
  for (const note of read.notes) parts.say(note);
  return asShown(read.terms, pixels, orientation);
}

function askUnit(terms: WorldFile, pixels: Pixels, name: string, { parts, show, signal }: Bringing): Promise<Unit> {
  return new Promise((settle) => {
    signal.addEventListener('abort', () => settle('called off'), { once: true });
    show({
      at: 'asking unit',
      name,
      choices: unitChoices(terms, pixels, parts.plan().site.units ?? 'metres'),
      answer: settle,
    });
  });
}

interface Laying {
  readonly name: string;
  readonly terms: WorldFile | undefined;
  readonly unit: MapUnit | 'without';
}

function lay(
  picture: ReadyPicture,
  blob: string,
  laying: Laying,
  { parts, surroundings }: Bringing,
): Failure | undefined {
  const { site } = parts.plan();
  const { terms, unit } = laying;
  const laid = terms && unit !== 'without' ? layByWorldFile(terms, picture, unit, site) : undefined;
  const isLaid = laid?.kind === 'laid';
  const image: ImageLayer = {
    id: makeId('m', parts.random),
    blob,
    widthPixels: picture.widthPixels,
    heightPixels: picture.heightPixels,
    placement: isLaid ? laid.placement : placeFor(picture, site, surroundings),
    opacity: 1,
    name: pictureName(laying.name),
    scaledBy: isLaid ? 'world file' : 'guess',
  };
  const result = parts.edit(withGrid({ edit: 'add image', image }, isLaid ? laid.grid : undefined, image.name ?? ''));
  // Others may have brought pictures while this one was on its way.
  if (result !== 'done') return site.images.length >= LIMITS.imageLayers ? TOO_MANY : TOO_SMALL;
  if (laid?.kind === 'not laid') parts.say(`${laid.why} It lies in view, at a guessed size.`);
  if (site.images.length === 0 || isLaid) surroundings?.showAll();
  return undefined;
}

function replace(
  picture: ReadyPicture,
  blob: string,
  { file, instead }: Picture,
  parts: ImportParts,
): Failure | undefined {
  if (instead === undefined) return undefined;
  const { widthPixels, heightPixels } = picture;
  const name = pictureName(file.name);
  const result = parts.edit({ edit: 'replace image', image: instead, blob, widthPixels, heightPixels, name });
  return result === 'gone'
    ? { why: 'Somebody removed the picture it was to replace: add it instead.', again: false }
    : undefined;
}

/** Where a picture lies at first: the first one about the site's origin at a guessed width, further ones in view. */
function placeFor(
  picture: Pixels,
  site: ReturnType<ImportParts['plan']>['site'],
  surroundings: Surroundings | undefined,
): Placement {
  const isBare = site.images.length === 0 && !site.boundary && site.features.length === 0;
  return isBare || !surroundings
    ? laidAbout(picture, { x: 0, y: 0 }, GUESSED_WIDTH)
    : laidInView(picture, surroundings.inView());
}

/** A file's name without its ending. */
export function pictureName(file: string): string {
  return parseName(file.replace(/\.[^.\s]{1,5}$/, ''), LIMITS.name) ?? 'Picture';
}
