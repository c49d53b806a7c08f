import { expect, test } from 'vitest';
import type { Answer, Question } from './pyramid/contract.ts';
import { levelsOf, type Tile } from './tile-grid.ts';
import { openTileStore } from './tile-store.ts';

interface PaperBitmap {
  readonly width: number;
  readonly height: number;
  closed: boolean;
  close(): void;
}

/** Pixels without a browser: they say whether they were let go. */
function paperBitmap(width = 512, height = 512): PaperBitmap {
  const bitmap = {
    width,
    height,
    closed: false,
    close: () => {
      bitmap.closed = true;
    },
  };
  return bitmap;
}

function paperStore() {
  const asked: Question[] = [];
  let opened = 0;
  const port = {
    onmessage: null as ((event: MessageEvent) => void) | null,
    onerror: null as ((event: ErrorEvent) => void) | null,
    postMessage: (question: Question) => asked.push(question),
    terminate: () => undefined,
  };
  const store = openTileStore(
    () => {
      opened += 1;
      return port;
    },
    (blob) => `/blobs/${blob}`,
  );
  const say = (answer: Answer) => port.onmessage?.(new MessageEvent('message', { data: answer }));
  const bring = (tile: Tile, bitmap = paperBitmap()) => {
    say({ kind: 'tile', tile, pixels: bitmap });
    return bitmap;
  };
  return { store, port, asked, say, bring, opened: () => opened };
}

const LEVELS = levelsOf(2048, 2048); // 16 tiles, then 4, then 1
const at = (level: number, column: number, row: number): Tile => ({ blob: 'b', level, column, row });

test('the images of the board are opened once each, and closed when they are gone', () => {
  const { store, asked, say } = paperStore();
  store.show(['b', 'b']);
  store.show(['b']);
  say({ kind: 'opened', blob: 'b', widthPixels: 2048, heightPixels: 2048 });
  expect(asked).toEqual([{ ask: 'open', blob: 'b', place: '/blobs/b' }]);
  expect(store.images.get().get('b')).toEqual({ kind: 'here', levels: LEVELS });
  store.show([]);
  expect(asked.at(-1)).toEqual({ ask: 'close', blob: 'b' });
  expect(store.images.get().size).toBe(0);
});

test('only tiles that are not here are asked for', () => {
  const { store, asked, bring } = paperStore();
  store.show(['b']);
  bring(at(2, 0, 0));
  store.want([at(2, 0, 0), at(0, 1, 1)]);
  expect(asked.at(-1)).toEqual({ ask: 'tiles', tiles: [at(0, 1, 1)] });
  expect(store.arrived.get()).toBe(1);
});

test('until a tile is here its part of a coarser one is drawn', () => {
  const { store, bring } = paperStore();
  store.show(['b']);
  expect(store.pieceFor(at(0, 3, 0), LEVELS)).toBeUndefined();
  const coarse = bring(at(2, 0, 0));
  // The fourth column of four: the last quarter of 512 pixels.
  expect(store.pieceFor(at(0, 3, 0), LEVELS)).toEqual({
    pixels: coarse,
    part: { left: 0.75, top: 0, right: 1, bottom: 0.25 },
    source: { left: 384, top: 0, width: 128, height: 128 },
  });
  const fine = bring(at(0, 3, 0));
  expect(store.pieceFor(at(0, 3, 0), LEVELS)).toMatchObject({ pixels: fine, source: { left: 0, width: 512 } });
});

test('tiles drawn longest ago are let go, those wanted now never', () => {
  const { store, bring } = paperStore();
  store.show(['b']);
  store.want([at(0, 0, 0)]);
  const wanted = bring(at(0, 0, 0), paperBitmap(4000, 4000));
  const older = bring(at(0, 1, 0), paperBitmap(4000, 3000));
  const newer = bring(at(0, 2, 0), paperBitmap(4000, 3000));
  expect([wanted.closed, older.closed, newer.closed]).toEqual([false, true, false]);
});

test('an image that could not be fetched is tried again, and a worker that broke is replaced', () => {
  const { store, port, asked, say, opened } = paperStore();
  store.show(['b']);
  say({ kind: 'missing', blob: 'b' });
  expect(store.images.get().get('b')).toEqual({ kind: 'missing' });
  store.again();
  expect(asked).toHaveLength(2);
  port.onerror?.(new Event('error') as ErrorEvent);
  expect(store.images.get().get('b')).toEqual({ kind: 'missing' });
  store.again();
  expect([opened(), asked.length]).toEqual([2, 3]);
});
