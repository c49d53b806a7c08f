import { readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { demoImage, demoPlan } from '@loopwright/demo';
import { isId, type Plan } from '@loopwright/model';
import { encode } from 'fast-png';
import { hashSecret } from '../access/secrets.ts';
import { type MadeBoard, makeBoard } from '../http/make-board.ts';
import type { ServerPorts } from '../ports.ts';

type DemoPorts = Pick<ServerPorts, 'access' | 'blobs' | 'clock' | 'limits' | 'store'>;

/** Where the demo's link is kept, so that it can be printed at each start. */
const NOTE = 'demo-link.json';

/**
 * The demo board of this server: made on the first run, found again later.
 *
 * @param directory  the data directory; the note in it opens the demo and nothing else
 */
export async function demoBoard(ports: DemoPorts, directory: string): Promise<MadeBoard> {
  const noted = await readNote(join(directory, NOTE));
  if (noted && (await ports.store.linkOf(noted.board, hashSecret(noted.secret)))) return noted;
  const { plan, blob } = await planWithImage(ports);
  const made = await makeBoard(ports, plan.site.name, plan);
  if (blob !== undefined) await ports.store.addBlob(made.board, blob);
  await writeFile(join(directory, `${NOTE}.part`), `${JSON.stringify(made)}\n`, { mode: 0o600 });
  await rename(join(directory, `${NOTE}.part`), join(directory, NOTE));
  return made;
}

/** The demo's plan with its site image, as it is kept here. */
async function planWithImage({ blobs, limits }: DemoPorts): Promise<{ readonly plan: Plan; readonly blob?: string }> {
  const { width, height, rgba } = demoImage();
  const image = encode({ width, height, data: rgba, channels: 4, depth: 8 });
  const kept = await blobs.put([image], limits.image);
  return kept.kind === 'kept' ? { plan: demoPlan(kept.hash), blob: kept.hash } : { plan: demoPlan() };
}

async function readNote(path: string): Promise<MadeBoard | undefined> {
  const text = await readFile(path, 'utf8').catch(() => undefined);
  if (text === undefined) return undefined;
  const { board, secret } = parseJson(text);
  return isId(board) && typeof secret === 'string' ? { board, secret } : undefined;
}

/** A note that was spoilt by hand is as good as none. */
function parseJson(text: string): { readonly board?: unknown; readonly secret?: unknown } {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? value : {};
  } catch {
    return {};
  }
}
