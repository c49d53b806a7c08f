import type { EditResult, NamedEdit } from '@loopwright/document';
import type { Box } from '@loopwright/geometry';
import type { ImageLayerId, Plan } from '@loopwright/model';
import type { Checked } from './reader/client.ts';
import type { Doing } from './reader/contract.ts';
import type { Sending, Sent } from './send-picture.ts';

/** What the drawing is asked while a picture comes in. */
export interface Surroundings {
  /** The ground that is in view. */
  inView(): Box;
  /** Brings everything into view. */
  showAll(): void;
}

/** What an import works with. */
export interface ImportParts {
  readonly edit: (edit: NamedEdit) => EditResult;
  readonly plan: () => Plan;
  /** The picture that is picked out. */
  readonly chosen: () => ImageLayerId | undefined;
  readonly say: (words: string) => void;
  /** Where the board keeps its images, with a slash at the end. */
  readonly address: string;
  readonly random: () => number;
  readonly check: (file: Blob, onDoing: (doing: Doing) => void, signal: AbortSignal) => Promise<Checked>;
  readonly send: (sending: Sending) => Promise<Sent>;
}

/** One thing that is brought, and what it is for. */
export type Job =
  | { readonly kind: 'picture'; readonly file: File; readonly worldFile?: File; readonly instead?: ImageLayerId }
  /** A world file for a picture that is there already. */
  | { readonly kind: 'world file'; readonly file: File };

/** Why a job came to nothing. */
export interface Failure {
  readonly why: string;
  /** Whether trying again can help. */
  readonly again: boolean;
}
