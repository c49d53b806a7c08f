import { afterEach, expect, test, vi } from 'vitest';
import { keepImage } from './keep-image.ts';
import { MOST_IMAGES } from './kept-images.ts';

afterEach(() => vi.unstubAllGlobals());

/** A browser's store on paper: what was put first is the oldest. */
function paperCaches() {
  const held = new Map<string, Response>();
  const store = {
    match: async (address: string) => held.get(address),
    put: async (address: string, response: Response) => void held.set(address, response),
    keys: async () => [...held.keys()],
    delete: async (address: string) => held.delete(address),
  };
  vi.stubGlobal('caches', { open: async () => store });
  return held;
}

test('an image lies at its address, as what it is', async () => {
  const held = paperCaches();
  await keepImage('/api/boards/b/blobs/1', new Blob(['pixels'], { type: 'image/png' }));
  const kept = held.get('/api/boards/b/blobs/1');
  expect(kept?.headers.get('content-type')).toBe('image/png');
  expect(await kept?.text()).toBe('pixels');
});

test('what is kept already is left, and the oldest makes room', async () => {
  const held = paperCaches();
  for (let image = 0; image < MOST_IMAGES + 2; image++) await keepImage(`/${image}`, new Blob([`${image}`]));
  await keepImage('/5', new Blob(['another']));
  expect([...held.keys()]).toEqual(Array.from({ length: MOST_IMAGES }, (_, index) => `/${index + 2}`));
  expect(await held.get('/5')?.text()).toBe('5');
});

test('a browser that keeps nothing, or has no room, is no trouble', async () => {
  await keepImage('/1', new Blob(['1']));
  vi.stubGlobal('caches', { open: () => Promise.reject(new Error('no room')) });
  await expect(keepImage('/1', new Blob(['1']))).resolves.toBeUndefined();
});
