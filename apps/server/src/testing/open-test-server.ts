import { Readable } from 'node:stream';
import { bytesAsSource, imageTypeOf, readImage } from '@loopwright/formats/image';
import { openAccess } from '../access/access.ts';
import { buildServer, type LoopwrightServer } from '../build-server.ts';
import { SERVER_LIMITS, type ServerLimits } from '../limits.ts';
import type { ServerPorts } from '../ports.ts';
import { type Blobs, isBlobHash } from '../storage/blobs.ts';
import { openSqliteStore } from '../storage/sqlite.ts';
import type { Store } from '../storage/store.ts';
import { handClock } from './hand-clock.ts';
import { knownChance } from './known-chance.ts';
import { paperLog } from './paper-log.ts';

/** Images in memory, under made-up hashes of the right form. */
export function paperBlobs(): Blobs {
  const kept = new Map<string, Uint8Array>();
  return {
    async put(pieces, limits) {
      const came: Uint8Array[] = [];
      for await (const piece of pieces) came.push(piece);
      const bytes = Buffer.concat(came);
      const reading = await readImage(bytesAsSource(bytes), limits);
      if (reading.kind === 'fault') return reading;
      const hash = kept.size.toString(16).padStart(64, '0');
      kept.set(hash, bytes);
      return { kind: 'kept', hash };
    },
    async get(hash) {
      const bytes = isBlobHash(hash) ? kept.get(hash) : undefined;
      const type = bytes && imageTypeOf(bytes);
      return bytes && type && { type, size: bytes.length, read: () => Readable.from([bytes]) };
    },
  };
}

export interface TestServer {
  readonly server: LoopwrightServer;
  readonly ports: ServerPorts;
  readonly log: ReturnType<typeof paperLog>;
}

/** A whole server in memory; never listens. */
export async function openTestServer(
  change: { readonly limits?: Partial<ServerLimits>; readonly store?: (store: Store) => Store } & Partial<
    Pick<ServerPorts, 'pageDirectory' | 'publicUrl'>
  > = {},
): Promise<TestServer> {
  const { limits, store: wrap, ...rest } = change;
  const kept = await openSqliteStore(':memory:');
  const store = wrap ? wrap(kept) : kept;
  const clock = handClock();
  const log = paperLog();
  const ports: ServerPorts = {
    store,
    blobs: paperBlobs(),
    access: openAccess({ store, clock, chance: knownChance() }),
    clock,
    log,
    limits: { ...SERVER_LIMITS, ...limits },
    ...rest,
  };
  return { server: await buildServer(ports), ports, log };
}
