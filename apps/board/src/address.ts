/** Where an address leads. */
export type Place =
  | { readonly kind: 'home' }
  | { readonly kind: 'board'; readonly board: string; readonly secret: string }
  | { readonly kind: 'nowhere' };

/** Reads `/` and `/b/BOARD#SECRET`; everything else leads nowhere. */
export function placeOf({ pathname, hash }: { readonly pathname: string; readonly hash: string }): Place {
  if (pathname === '/' || pathname === '/index.html') return { kind: 'home' };
  const board = /^\/b\/([A-Za-z0-9_-]{1,64})\/?$/.exec(pathname)?.[1];
  return board === undefined ? { kind: 'nowhere' } : { kind: 'board', board, secret: hash.replace(/^#/, '') };
}
