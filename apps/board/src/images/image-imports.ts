import type { ImageLayerId } from '@loopwright/model';
import { openSlot, type Watched } from '../live/slot.ts';
import { bringPicture, bringWorldFile } from './bring-picture.ts';
import { sortFiles, worldFileFor } from './dropped-files.ts';
import type { ImportParts, Job, Surroundings } from './import-parts.ts';
import type { ImportStep } from './import-step.ts';

/** Pictures on their way to the board that is open. */
export interface ImageImports {
  readonly step: Watched<ImportStep>;
  /** Lays pictures on the board, one after the other; world files go with the picture of their name. */
  add(files: readonly File[]): Promise<void>;
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
    const { signal } = controller;
    now = controller;
    const { name } = job.file;
    step.set({ at: 'checking', name, doing: 'reading', waiting: waiting.length });
    const bringing = { parts, surroundings, signal, show: step.set, waiting: () => waiting.length };
    const failure = await (job.kind === 'picture' ? bringPicture(job, bringing) : bringWorldFile(job.file, bringing));
    now = undefined;
    failed = failure ? job : undefined;
    if (failure) step.set({ at: 'failed', name, ...failure });
    else if (waiting.length === 0) step.set({ at: 'idle' });
    next();
  };
  /** Whoever brings another has seen what was wrong with the one before. */
  const bring = (jobs: readonly Job[]) => {
    failed = undefined;
    waiting = [...waiting, ...jobs];
    next();
  };

  return {
    step,
    add: async (files) => bring(jobsFor(await sortFiles(files))),
    replace: (instead, file) => bring([{ kind: 'picture', file, instead }]),
    cancel: () => now?.abort(),
    again: () => {
      if (failed) waiting = [failed, ...waiting];
      failed = undefined;
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

/** Pictures with their world files, then the world files that came alone; what is neither is a picture that will be refused. */
function jobsFor(sorted: Awaited<ReturnType<typeof sortFiles>>): readonly Job[] {
  const used = new Set<File>();
  const pictures = [...sorted.pictures, ...sorted.others].map((file): Job => {
    const worldFile = worldFileFor(file, sorted);
    if (!worldFile) return { kind: 'picture', file };
    used.add(worldFile);
    return { kind: 'picture', file, worldFile };
  });
  const alone = sorted.worldFiles.filter((file) => !used.has(file));
  return [...pictures, ...alone.map((file): Job => ({ kind: 'world file', file }))];
}
