/** Ours among the cookies of a host; named by board and membership, so that two links or two boards never mix. */
const PREFIX = 'loopwright_';

/** How long a browser remembers who it is on a board, in seconds: a routing season. */
export const COOKIE_SECONDS = 180 * 24 * 3600;

/** The name of the cookie that lets a membership in. Ids have no underscore. */
export function cookieName(board: string, membership: string): string {
  return `${PREFIX}${board}_${membership}`;
}

/** A token this browser holds for a board. */
export interface HeldToken {
  readonly membership: string;
  readonly token: string;
}

/** Every membership of one board that a browser's cookies speak of, unproven. */
export function heldTokens(board: string, cookies: Readonly<Record<string, string | undefined>>): readonly HeldToken[] {
  const start = `${PREFIX}${board}_`;
  return Object.entries(cookies).flatMap(([name, token]) =>
    name.startsWith(start) && token ? [{ membership: name.slice(start.length), token }] : [],
  );
}
