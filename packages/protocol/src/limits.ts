/** Every limit of sync and of site images, each with its unit in words. Server and page read the same numbers. */
export const LIMITS = {
  /** Bytes of one frame on the socket; above it it is refused as too large. */
  mostFrameBytes: 4 * 1024 * 1024,
  /** Bytes of one offered update. */
  mostUpdateBytes: 2 * 1024 * 1024,
  /** Bytes of a whole stored document. */
  mostStateBytes: 16 * 1024 * 1024,
  /** Bytes of one value under one key: an area of 50 rings of 500 vertices needs some 700,000. */
  mostValueBytes: 1024 * 1024,
  /** Levels of lists and objects in one value. */
  mostValueDepth: 8,
  /** Letters of one key. */
  mostKeyLetters: 400,
  /** Bytes of one person's presence. */
  mostPresenceBytes: 4096,
  /** People in one presence frame. */
  mostPresenceEntries: 256,
  /** Least milliseconds between two presence frames of one page: about 25 a second. */
  presenceEvery: 40,
  /** Milliseconds after which a held drag is said again, so that it does not run out. */
  dragRepeatedAfter: 1000,
  /** Milliseconds without a tick after which a drag is forgotten. */
  dragForgottenAfter: 3000,
  /** Milliseconds between two repeats of the durable count. */
  heartbeatEvery: 15_000,
  /** Milliseconds: longest wait before the next try to connect. */
  longestRetryWait: 15_000,
  /** Bytes waiting for a slow reader above which it gets no presence. */
  presenceDroppedAboveBytes: 256 * 1024,
  /** Bytes waiting for a slow reader above which it is closed: a whole board on its way, and 8 MiB of news. */
  slowReaderClosedAboveBytes: 24 * 1024 * 1024,
  /** Updates of one connection waiting for the store. */
  mostUpdatesWaiting: 256,
  /** Letters of a person's name. */
  mostNameLetters: 60,
  /** Bytes of one site image: an aerial of 60 million pixels as PNG, two bytes a pixel. */
  mostImageBytes: 128 * 1024 * 1024,
  /** Pixels of one site image: what cameras call 60 megapixels, e.g. 9504 × 6336; a quarter of it fits every canvas. */
  mostImagePixels: 64_000_000,
  /** Pixels of its longer side: browsers decode no longer ones. */
  mostImageSide: 30_000,
} as const;

export type LimitName = keyof typeof LIMITS;
