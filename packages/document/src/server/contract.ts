/** Which rights a connection has in a room. */
export type Rights = 'read' | 'write';

/**
 * The answer to an offered update. Nothing is applied until the store has committed it. Updates found new one after the
 * other, without an `apply` or `forgo` between them, go into the store together or not at all.
 */
export type Offer =
  /** To be stored, then passed to `apply`. */
  | { readonly kind: 'new'; readonly update: Uint8Array }
  /** The room holds all of it already: acknowledge, store nothing. */
  | { readonly kind: 'known' }
  /** Something it builds on has not arrived: answer with a fresh step 1, never with a refusal. */
  | { readonly kind: 'early' }
  | {
      readonly kind: 'refused';
      readonly code: 'not-a-writer' | 'malformed' | 'too-large' | 'unknown-root' | 'bad-key' | 'bad-value';
    };

export interface RoomRules {
  /** The roots an update may touch, with the grammar of their keys. */
  readonly room: 'plan' | 'record';
  readonly mostUpdateBytes: number;
  readonly mostStateBytes: number;
}

/** One shared document as the server holds it: bytes in, bytes out. */
export interface RoomDocument {
  vector(): Uint8Array;
  missing(vector: Uint8Array): Uint8Array;
  offer(update: Uint8Array, rights: Rights): Offer;
  apply(update: Uint8Array): void;
  /** The store failed: what was found new and has not been applied is not coming. */
  forgo(): void;
  state(): Uint8Array;
  close(): void;
}

export type OpenRoom = (rules: RoomRules, state?: Uint8Array) => RoomDocument;
