import { type EnterAnswer, parseEnterAnswer } from '@loopwright/protocol';

/**
 * How this browser last entered a board by a link, so that the board opens without a server. No secret is kept: the
 * entry is found again by a digest of it, and a link that was refused is forgotten.
 */
export interface KeptEntries {
  find(board: string, secret: string): Promise<EnterAnswer | undefined>;
  keep(secret: string, answer: EnterAnswer): Promise<void>;
  forget(board: string, secret: string): Promise<void>;
}

type Digest = (text: string) => Promise<string | undefined>;

/** @param digest  tells two secrets apart without telling them; answers nothing where the browser cannot */
export function openKeptEntries(
  storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>,
  digest: Digest,
): KeptEntries {
  const nameFor = async (board: string, secret: string) => {
    const known = await digest(`${board} ${secret}`);
    return known && `loopwright entry ${board} ${known}`;
  };
  return {
    find: async (board, secret) => {
      const name = await nameFor(board, secret);
      return name === undefined ? undefined : attempt(() => parseKept(storage.getItem(name)));
    },
    keep: async (secret, answer) => {
      const name = await nameFor(answer.board, secret);
      if (name !== undefined) attempt(() => storage.setItem(name, JSON.stringify(answer)));
    },
    forget: async (board, secret) => {
      const name = await nameFor(board, secret);
      if (name !== undefined) attempt(() => storage.removeItem(name));
    },
  };
}

function parseKept(text: string | null): EnterAnswer | undefined {
  if (text === null) return undefined;
  try {
    return parseEnterAnswer(JSON.parse(text));
  } catch {
    return undefined; // not what this page wrote
  }
}

/** A browser that forbids storage, or whose disk is full: the board opens with a server only. */
function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

/** The first 16 hex digits of SHA-256; nothing on plain http, where a page cannot be opened offline anyway. */
export async function shortDigest(text: string): Promise<string | undefined> {
  if (!globalThis.crypto?.subtle) return undefined;
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
  return Array.from(bytes.slice(0, 8), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
