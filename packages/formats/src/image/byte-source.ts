/** Bytes that are fetched as they are asked for: a file on a disk, or one just dropped on a page. */
export interface ByteSource {
  /** In bytes. */
  readonly size: number;
  /** So many bytes from `at` on; fewer only where the source ends. */
  read(at: number, length: number): Promise<Uint8Array>;
}

/** A source looked at through a window, so that many small looks are few reads. */
export interface Window {
  readonly size: number;
  /** `length` bytes from `at` on; `undefined` when the source ends before. */
  look(at: number, length: number): Promise<DataView | undefined>;
}

/** Bytes fetched at a time. */
const WINDOW = 64 * 1024;

/** Opens a window on a source. Looks that go forward are cheapest: each byte is fetched once. */
export function windowOn(source: ByteSource): Window {
  let held: Uint8Array = new Uint8Array();
  let from = 0;
  return {
    size: source.size,
    async look(at, length) {
      if (at < 0 || at + length > source.size) return undefined;
      if (at < from || at + length > from + held.length) {
        held = await source.read(at, Math.max(WINDOW, length));
        from = at;
      }
      return length > held.length ? undefined : new DataView(held.buffer, held.byteOffset + at - from, length);
    },
  };
}

/** Bytes that are all there. */
export function bytesAsSource(bytes: Uint8Array): ByteSource {
  return { size: bytes.length, read: async (at, length) => bytes.subarray(at, at + length) };
}
