// Keeps the page and the images of its boards on this machine, so that a board that was opened opens without a network.
import { ExpirationPlugin } from 'workbox-expiration';
import { addRoute, matchPrecache, precache } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { CacheFirst } from 'workbox-strategies';
import { KEPT_IMAGES, MOST_IMAGES } from '../kept-images.ts';

/** The files of the built page with their revisions, put in by the build. */
declare const PAGE_FILES: readonly { readonly url: string; readonly revision: string | null }[];

/** Milliseconds a page is waited for before the kept one is shown: on a train a network often hangs and never answers. */
const PATIENCE = 4000;

/** The library's own type of a plugin has no room for what it declares as undefined. */
function keepFew({ cachedResponseWillBeUsed, cacheDidUpdate }: ExpirationPlugin) {
  return {
    ...(cachedResponseWillBeUsed && { cachedResponseWillBeUsed }),
    ...(cacheDidUpdate && { cacheDidUpdate }),
  };
}

precache([...PAGE_FILES]);

/** The page from the network, for a new one may be there; the kept one where none comes. */
async function page({ request }: { readonly request: Request }): Promise<Response> {
  const kept = await matchPrecache('/');
  try {
    return await fetch(request, kept ? { signal: AbortSignal.timeout(PATIENCE) } : {});
  } catch (error) {
    if (kept) return kept;
    throw error;
  }
}
// Before the kept files, of which '/' is one: the first route that fits answers, and a kept page may be an old one.
registerRoute(new NavigationRoute(page, { allowlist: [/^\/$/, /^\/b\/[^/]+\/?$/] }));
addRoute();

// Named by the hash of their content: what is kept is never out of date.
registerRoute(
  ({ url }) => /^\/api\/boards\/[^/]+\/blobs\/[0-9a-f]{64}$/.test(url.pathname),
  new CacheFirst({
    cacheName: KEPT_IMAGES,
    plugins: [keepFew(new ExpirationPlugin({ maxEntries: MOST_IMAGES, purgeOnQuotaError: true }))],
  }),
);
