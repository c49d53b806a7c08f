import type { EditResult, NamedEdit } from '@loopwright/document';
import type { Box } from '@loopwright/geometry';
import { type ImageLayer, type ImageLayerId, makeId, type Plan } from '@loopwright/model';
import { openSlot, type Watched } from '../live/slot.ts';
import type { ImportStep } from './import-step.ts';
import { GUESSED_WIDTH, laidAbout, laidInView, type Placement } from './placement.ts';
import type { Checked } from './reader/client.ts';
import type { Doing, ReadyPicture } from './reader/contract.ts';
import type { Sending, Sent } from './send-picture.ts';

/** What the drawing is asked while a picture comes in. */
export interface Surroundings {
  /** The ground that is in view. */
  inView(): Box;
  /** Brings everything into view. */
  showAll(): void;
}

/** Pictures on their way to the board that is open. */
export interface ImageImports {
  readonly step: Watched<ImportStep>;
  /** Lays pictures on the board, one after the other. */
  add(files: readonly File[]): void;
  /** Other pixels in the same place. */
  replace(image: ImageLayerId, file: File): void;
  /** Calls off the picture on its way; those that wait come next. */
  cancel(): void;
  /** Tries the failed picture again. */
  again(): void;
  /** Puts away what is said about a failed one. */
  dismiss(): void;
  /** The drawing, once there is one. */
  attach(surroundings: Surroundings): void;
  close(): void;
}

export interface ImportParts {
  readonly edit: (edit: NamedEdit) => EditResult;
  readonly plan: () => Plan;
  readonly say: (words: string) => void;
  /** Where the board keeps its images, with a slash at the end. */
  readonly address: string;
  readonly random: () => number;
  readonly check: (file: Blob, onDoing: (doing: Doing) => void, signal: AbortSignal) => Promise<Checked>;
  readonly send: (sending: Sending) => Promise<Sent>;
}

/** One picture and what it is for. */
interface Job {
  readonly file: File;
  readonly instead?: ImageLayerId;
}

/** @see ImageImports */
export function openImageImports(parts: ImportParts): ImageImports {
  const step = openSlot<ImportStep>({ at: 'idle' });
  let waiting: readonly Job[] = [];
  let now: AbortController | undefined;
  let failed: Job | undefined;
  let surroundings: Surroundings | undefined;

  const next = () => {
    const [job, ...rest] = waiting;
    if (now || failed || !job) return;
    waiting = rest;
    void run(job);
  };
  const run = async (job: Job) => {
    const controller = new AbortController();
    now = controller;
    const outcome = await bring(job, controller.signal);
    now = undefined;
    failed = outcome ? job : undefined;
    if (outcome) step.set({ at: 'failed', name: job.file.name, ...outcome });
    else if (waiting.length === 0) step.set({ at: 'idle' });
    next();
  };
  /** Answers why it did not work; nothing when it did, or was called off. */
  const bring = async ({ file, instead }: Job, signal: AbortSignal) => {
    const { name } = file;
    const doing = (what: Doing) => step.set({ at: 'checking', name, doing: what, waiting: waiting.length });
    doing('reading');
    const checked = await parts.check(file, doing, signal);
    if (!checked) return undefined;
    if (checked.kind === 'refused') return { why: checked.why, again: false };
    const { picture } = checked;
    const onProgress = (sent: number, all: number) =>
      step.set({ at: 'sending', name, sent, all, waiting: waiting.length });
    onProgress(0, picture.file.size);
    const sent = await parts.send({ picture, address: parts.address, onProgress, signal });
    if (!sent || signal.aborted) return undefined;
    if (sent.kind === 'refused') return { why: sent.why, again: true };
    return settle(picture, sent.hash, name, instead);
  };
  const settle = (picture: ReadyPicture, blob: string, fileName: string, instead: ImageLayerId | undefined) => {
    const { widthPixels, heightPixels } = picture;
    const name = pictureName(fileName);
    const isFirst = parts.plan().site.images.length === 0;
    if (instead !== undefined) {
      const result = parts.edit({ edit: 'replace image', image: instead, blob, widthPixels, heightPixels, name });
      if (result === 'gone')
        return { why: 'Somebody removed the picture it was to replace: add it instead.', again: false };
    } else {
      const placement = placeFor(picture, parts.plan(), surroundings);
      const id = makeId('m', parts.random);
      const image: ImageLayer = { id, blob, widthPixels, heightPixels, placement, opacity: 1, name, scaledBy: 'guess' };
      parts.edit({ edit: 'add image', image });
    }
    if (picture.converted !== undefined) parts.say(`${name}: ${picture.converted}.`);
    if (isFirst) surroundings?.showAll();
    return undefined;
  };

  return {
    step,
    add: (files) => {
      failed = undefined; // who brings another has seen what was wrong
      waiting = [...waiting, ...files.map((file) => ({ file }))];
      next();
    },
    replace: (image, file) => {
      failed = undefined;
      waiting = [...waiting, { file, instead: image }];
      next();
    },
    cancel: () => now?.abort(),
    again: () => {
      const job = failed;
      failed = undefined;
      if (job) waiting = [job, ...waiting];
      next();
    },
    dismiss: () => {
      failed = undefined;
      step.set({ at: 'idle' });
      next();
    },
    attach: (to) => {
      surroundings = to;
    },
    close: () => {
      waiting = [];
      now?.abort();
    },
  };
}

/** Where a picture lies at first: the first one about the site's origin at a guessed width, further ones in view. */
function placeFor(picture: ReadyPicture, { site }: Plan, surroundings: Surroundings | undefined): Placement {
  const isBare = site.images.length === 0 && !site.boundary && site.features.length === 0;
  return isBare || !surroundings
    ? laidAbout(picture, { x: 0, y: 0 }, GUESSED_WIDTH)
    : laidInView(picture, surroundings.inView());
}

/** Letters of a picture's name. */
const MOST_LETTERS = 120;

/** A file's name without its ending. */
export function pictureName(file: string): string {
  const name = file.replace(/\.[^.\s]{1,5}$/, '').trim();
  return (name === '' ? 'Picture' : name).slice(0, MOST_LETTERS);
}
