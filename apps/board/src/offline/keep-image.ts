import { KEPT_IMAGES, MOST_IMAGES } from './kept-images.ts';

/**
 * Keeps an image for days without a network, at the address where the board has it.
 *
 * The service worker keeps what goes through it. That leaves out all of the first visit, and a picture that this page
 * brought itself and never fetched. Where a browser keeps nothing, or has no room, nothing is kept and nothing fails.
 */
export async function keepImage(address: string, image: Blob): Promise<void> {
  if (!('caches' in globalThis)) return;
  try {
    const kept = await caches.open(KEPT_IMAGES);
    if (await kept.match(address)) return;
    await kept.put(address, new Response(image, { headers: { 'content-type': image.type } }));
    const all = await kept.keys();
    await Promise.all(all.slice(0, Math.max(0, all.length - MOST_IMAGES)).map((oldest) => kept.delete(oldest)));
  } catch {
    // No room: the board works on, with the network.
  }
}
