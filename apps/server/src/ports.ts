import type { Access } from './access/access.ts';
import type { Clock } from './clock.ts';
import type { ServerLimits } from './limits.ts';
import type { Log } from './log.ts';
import type { MakeFanOut } from './rooms/fan-out.ts';
import type { Blobs } from './storage/blobs.ts';
import type { Store } from './storage/store.ts';

/** Everything the server touches outside itself; tests give their own. */
export interface ServerPorts {
  readonly store: Store;
  readonly blobs: Blobs;
  readonly access: Access;
  readonly clock: Clock;
  readonly log: Log;
  readonly limits: ServerLimits;
  /** How a room's messages reach its people; within this process when absent. */
  readonly fanOut?: MakeFanOut;
  /** The built page; without it the server answers its API alone. */
  readonly pageDirectory?: string;
  /** Where people reach the server, when a proxy stands before it, e.g. `https://boards.example.org`. */
  readonly publicUrl?: string;
}
