/** What a link lets its holder do. Only `designer` is handed out today. */
export type Role = 'designer' | 'client' | 'viewer';

export interface Board {
  readonly id: string;
  readonly name: string;
  readonly createdAt: number;
}

/** A way in. The secret itself is never kept, only its SHA-256. */
export interface Link {
  readonly id: string;
  readonly board: string;
  readonly secretHash: string;
  readonly role: Role;
  readonly revoked: boolean;
  /** Milliseconds since 1970; after this it opens nothing. */
  readonly endsAt?: number;
}

/** One person on one board, as let in by one link. */
export interface Membership {
  readonly id: string;
  readonly board: string;
  readonly link: string;
  /** SHA-256 of the cookie's token. */
  readonly tokenHash: string;
  readonly name: string;
  /** Index of one of eight inks. */
  readonly ink: number;
  /** Raised when the browser's local copy must not be used again. */
  readonly epoch: number;
}

/** Two shared documents per board: what designers write, and what the server alone records. */
export type RoomName = 'plan' | 'record';

export interface RoomKey {
  readonly board: string;
  readonly room: RoomName;
}

/** Everything stored of a room, oldest first; `through` is the number of the last entry. */
export interface RoomLog {
  readonly updates: readonly Uint8Array[];
  readonly through: number;
}

/**
 * What must outlive the process. Every promise that is kept means: on the disk.
 *
 * A broken promise means nothing of that call was kept; the caller may ask again.
 */
export interface Store {
  /** The board, its first link and the first state of its plan, in one transaction. */
  addBoard(board: Board, link: Link, plan: Uint8Array): Promise<void>;
  board(id: string): Promise<Board | undefined>;

  addLink(link: Link): Promise<void>;
  link(id: string): Promise<Link | undefined>;
  linkOf(board: string, secretHash: string): Promise<Link | undefined>;
  revokeLink(id: string): Promise<void>;

  addMembership(membership: Membership): Promise<void>;
  membership(id: string): Promise<Membership | undefined>;
  countMemberships(board: string): Promise<number>;
  /** The membership's new epoch. */
  raiseEpoch(membership: string): Promise<number>;

  roomLog(key: RoomKey): Promise<RoomLog>;
  /** All of them or none, in this order, in one transaction. */
  append(key: RoomKey, updates: readonly Uint8Array[]): Promise<void>;
  /** Puts one state in the place of every entry up to `through`. */
  compact(key: RoomKey, state: Uint8Array, through: number): Promise<void>;

  /** Remembers that this image is shown on that board. */
  addBlob(board: string, hash: string): Promise<void>;
  hasBlob(board: string, hash: string): Promise<boolean>;

  /** Breaks its promise when nothing can be written. */
  check(): Promise<void>;
  close(): Promise<void>;
}
