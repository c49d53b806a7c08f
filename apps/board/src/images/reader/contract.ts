/** What crosses between page and worker about a picture that is to become a site image. */
export type Question = { readonly ask: 'check'; readonly file: Blob };

/** What takes a while. */
export type Doing = 'reading' | 'decoding' | 'converting';

/** A picture that every page can show, ready to be sent. Sizes are as it is shown. */
export interface ReadyPicture {
  readonly file: Blob;
  readonly type: string;
  readonly widthPixels: number;
  readonly heightPixels: number;
  /** SHA-256, hex; absent where the browser works none out (a page over plain http). */
  readonly hash?: string;
  /** How the pixels of the file lie, 1 to 8: a world file speaks of them as they are stored. */
  readonly orientation: number;
  /** It had to be turned into another file: what was done, in words. */
  readonly converted?: string;
}

export type Answer =
  | { readonly kind: 'doing'; readonly doing: Doing }
  | { readonly kind: 'ready'; readonly picture: ReadyPicture }
  /** One sentence with what to do. */
  | { readonly kind: 'refused'; readonly why: string };
