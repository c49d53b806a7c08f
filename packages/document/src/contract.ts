import type { HoleId, Plan, RoutingId, SitePoint } from '@loopwright/model';
import type { EditResult, NamedEdit } from './edits/named-edit.ts';

export type Stop = () => void;

/**
 * What came of an undo or redo. `overtaken` counts the values somebody else changed meanwhile: those stay theirs. `gone`
 * are the holes of the step that somebody else took off the plan meanwhile; they stay off it.
 */
export type UndoResult =
  | {
      readonly kind: 'undone' | 'redone';
      readonly step: NamedEdit;
      readonly overtaken: number;
      readonly gone?: readonly HoleId[];
    }
  | { readonly kind: 'nothing' };

/** What came of taking back everything since a chosen step. */
export type PutBackResult =
  | { readonly kind: 'put back'; readonly steps: number; readonly overtaken: number }
  | { readonly kind: 'nothing' };

/** One of my steps that still stands. `number` names it for as long as the page is open. */
export interface DoneStep {
  readonly number: number;
  readonly edit: NamedEdit;
}

/** A field that could not be read, skipped the same way everywhere. */
export interface UnreadField {
  readonly root: string;
  readonly key: string;
}

/** The plan of one board, as this page or server holds it. No signature shows how it is shared. */
export interface PlanDocument {
  /** Frozen; untouched holes, features and routings keep their identity between reads. */
  read(): Plan;
  /** The plan as it would be with these edits done, in order; writes nothing. Edits that no longer apply are left out. */
  readWith(live: readonly NamedEdit[]): Plan;
  /** Done here at once, one undo step, sent when connected. */
  edit(edit: NamedEdit): EditResult;
  /** One's own last step, whatever others did since. */
  undo(): UndoResult;
  redo(): UndoResult;
  /** What `undo` and `redo` would take back or do again, for the menu's words. */
  steps(): { readonly undo?: NamedEdit; readonly redo?: NamedEdit };
  /** My steps that undo could take back, oldest first. The same list until one is added or taken back. */
  done(): readonly DoneStep[];
  /**
   * Puts back that step of mine and all after it, as one step that can be undone; others' work stays. `overtaken` counts
   * the values that are somebody else's now. `nothing` when I have no such step, or it is too long ago.
   */
  putBack(from: number): PutBackResult;
  unread(): readonly UnreadField[];
  /** Called after each change, own or others'; at most once per transaction. */
  onChange(listener: () => void): Stop;
  /** The whole document as bytes, for a draft or a copy. */
  state(): Uint8Array;
  close(): void;
}

/** What one person shows the others right now. Never stored. */
export interface PresenceState {
  readonly pointer?: SitePoint;
  readonly selection: readonly HoleId[];
  readonly routing?: RoutingId;
  /** The edit a drag in progress would make if it ended now. */
  readonly drag?: NamedEdit;
}

/** Somebody else on the board; name and ink are set by the server. */
export interface Person extends PresenceState {
  /** One per open page. */
  readonly client: number;
  readonly name: string;
  /** Index of one of eight inks. */
  readonly ink: number;
}

export interface Presence {
  /** This page's own client number. */
  readonly client: number;
  /** Replaces what the others see of me; sent at most about 25 times a second, the newest wins. */
  say(state: PresenceState): void;
  /** Others only. A drag whose ticks stopped for 3 s is left out. */
  others(): readonly Person[];
  onChange(listener: () => void): Stop;
}

/**
 * What the head says, truthfully. `saved`: the server has committed everything done here.
 * `saving`: sent or about to be. `offline`: kept on this machine (`kept: true`) or only in this page.
 */
export type SavedState =
  | { readonly kind: 'joining' }
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving'; readonly waiting: number }
  | { readonly kind: 'offline'; readonly kept: boolean; readonly waiting: number }
  | { readonly kind: 'closed'; readonly code: number };

export interface Connection {
  readonly presence: Presence;
  saved(): SavedState;
  onSaved(listener: () => void): Stop;
  /** The server closed for good (4400–4499); `draft` holds edits it did not take, for the person to download. */
  onClosed(listener: (code: number, draft: Uint8Array | undefined) => void): Stop;
  close(): void;
}

export interface ConnectOptions {
  /** e.g. `wss://host/sync`. */
  readonly url: string;
  readonly board: string;
  readonly membership: string;
  /** Raised by the server when a membership's local copy must not be used again. */
  readonly epoch: number;
  /** Off in tests that have no IndexedDB. */
  readonly keepOffline: boolean;
  /** The page's own `WebSocket` unless a test brings another. */
  readonly socket?: typeof WebSocket;
  /** The machine's own unless a test moves it. */
  readonly clock?: Clock;
  /** Numbers in [0, 1) that spread the tries to connect again. */
  readonly random?: () => number;
}

/** Time as the connection takes it. */
export interface Clock {
  /** Milliseconds since some moment. */
  now(): number;
  /** Does it once, so many milliseconds from now, unless stopped. */
  after(milliseconds: number, work: () => void): Stop;
}

export type { EditResult, NamedEdit };
