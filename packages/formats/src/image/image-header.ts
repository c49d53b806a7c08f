/** The kinds of image that every browser shows. */
export type ImageType = 'image/png' | 'image/jpeg' | 'image/webp';

/** What an image says about itself, as it is shown: turned as its orientation asks. */
export interface ImageHeader {
  readonly type: ImageType;
  readonly widthPixels: number;
  readonly heightPixels: number;
  /** How the stored pixels lie, 1 to 8; 1 as they are shown. Source: Exif 2.32, tag 0x0112. */
  readonly orientation: number;
  /** Of each colour of a pixel. */
  readonly bits: number;
  /** Four inks instead of three colours. */
  readonly inks: boolean;
}

/** Why a file is no image that can lie under a plan. */
export type ImageFault =
  | 'empty'
  | 'not an image'
  | 'cut off'
  | 'no pixels'
  | 'too many bytes'
  | 'too many pixels'
  | 'too long a side'
  | 'moving'
  | 'coding';

/** What a look at an image's header found. */
export type ImageReading =
  | { readonly kind: 'image'; readonly header: ImageHeader }
  | { readonly kind: 'fault'; readonly fault: ImageFault };

/** How large an image may be, in bytes and pixels. */
export interface ImageLimits {
  readonly mostImageBytes: number;
  readonly mostImagePixels: number;
  /** Pixels of the longer side. */
  readonly mostImageSide: number;
}

/** What one kind of image answers: its stored size, or a fault. */
export type Stored = Omit<ImageHeader, 'type'> | ImageFault;

/** Orientations 5 to 8 lie on their side. */
export function asShown(stored: Omit<ImageHeader, 'type'>): Omit<ImageHeader, 'type'> {
  return stored.orientation < 5
    ? stored
    : { ...stored, widthPixels: stored.heightPixels, heightPixels: stored.widthPixels };
}
