import type { EditResult, NamedEdit } from '@loopwright/document';
import { newPlan, type Plan } from '@loopwright/model';
import { expect, test } from 'vitest';
import { pictureName } from './bring-picture.ts';
import { openImageImports } from './image-imports.ts';
import type { ImportParts } from './import-parts.ts';
import type { Checked } from './reader/client.ts';
import type { Sent } from './send-picture.ts';

const BARE = newPlan({ name: 'Moor', units: 'metres', holes: 18, freshId: (letter) => `${letter}1` });
const HASH = 'a'.repeat(64);

/** A board on paper: what is asked of it waits until the test answers. */
function paperBoard(plan: Plan = BARE, result: EditResult = 'done') {
  const edits: NamedEdit[] = [];
  const said: string[] = [];
  const checks: { readonly name: string; readonly settle: (checked: Checked) => void }[] = [];
  const sends: { readonly progress: (sent: number) => void; readonly settle: (sent: Sent) => void }[] = [];
  const parts: ImportParts = {
    edit: (edit) => {
      edits.push(edit);
      return result;
    },
    plan: () => plan,
    chosen: () => undefined,
    say: (words) => said.push(words),
    address: '/blobs/',
    random: () => 0,
    check: (file, _onDoing, signal) =>
      new Promise((settle) => {
        checks.push({ name: file instanceof File ? file.name : '', settle });
        signal.addEventListener('abort', () => settle(undefined));
      }),
    send: ({ onProgress, signal }) =>
      new Promise((settle) => {
        sends.push({ progress: (sent) => onProgress(sent, 1000), settle });
        signal.addEventListener('abort', () => settle(undefined));
      }),
  };
  return { imports: openImageImports(parts), edits, said, checks, sends };
}

const file = (name: string) => new File(['x'], name);
const ready: Checked = {
  kind: 'ready',
  picture: { file: new Blob(['x']), type: 'image/png', widthPixels: 600, heightPixels: 400, orientation: 1 },
};
const kept: Sent = { kind: 'kept', hash: HASH };
/** Everything that waits on what was just answered. */
const settled = async (): Promise<void> => {
  for (let turn = 0; turn < 10; turn++) await new Promise(setImmediate);
};

test('the first picture on bare land lies about its middle, 1200 m wide by a guess, and is brought into view', async () => {
  const board = paperBoard();
  let shown = 0;
  board.imports.attach({ inView: () => ({ minX: 0, minY: 0, maxX: 1, maxY: 1 }), showAll: () => shown++ });
  await board.imports.add([file('aerial 2024.jpg')]);
  board.checks[0]?.settle(ready);
  await settled();
  board.sends[0]?.progress(400);
  expect(board.imports.step.get()).toMatchObject({ at: 'sending', sent: 400, all: 1000 });
  board.sends[0]?.settle(kept);
  await settled();
  expect(board.edits).toEqual([
    {
      edit: 'add image',
      image: {
        id: 'maaaaaaaaaa',
        blob: HASH,
        widthPixels: 600,
        heightPixels: 400,
        placement: [2, 0, -600, 0, -2, 400],
        opacity: 1,
        name: 'aerial 2024',
        scaledBy: 'guess',
      },
    },
  ]);
  expect([shown, board.imports.step.get()]).toEqual([1, { at: 'idle' }]);
});

test('a picture that is called off leaves no trace, and the next one comes', async () => {
  const board = paperBoard();
  await board.imports.add([file('one.png'), file('two.png')]);
  expect(board.imports.step.get()).toMatchObject({ at: 'checking', name: 'one.png', waiting: 1 });
  board.imports.cancel();
  await settled();
  expect(board.checks.map(({ name }) => name)).toEqual(['one.png', 'two.png']);
  board.checks[1]?.settle(ready);
  await settled();
  board.imports.cancel();
  await settled();
  expect(board.edits).toEqual([]);
  expect(board.imports.step.get()).toEqual({ at: 'idle' });
});

test('a refused picture stops the queue with a word until it is put away', async () => {
  const board = paperBoard();
  await board.imports.add([file('zip.png'), file('good.png')]);
  board.checks[0]?.settle({ kind: 'refused', why: 'It is no picture.' });
  await settled();
  expect(board.imports.step.get()).toEqual({ at: 'failed', name: 'zip.png', why: 'It is no picture.', again: false });
  expect(board.checks).toHaveLength(1);
  board.imports.dismiss();
  expect(board.checks).toHaveLength(2);
});

test('a picture the server did not get is kept and tried again', async () => {
  const board = paperBoard();
  await board.imports.add([file('aerial.png')]);
  board.checks[0]?.settle(ready);
  await settled();
  board.sends[0]?.settle({ kind: 'refused', why: 'The server did not answer.' });
  await settled();
  expect(board.imports.step.get()).toMatchObject({ at: 'failed', again: true });
  board.imports.again();
  expect(board.checks[1]?.name).toBe('aerial.png');
});

test('a picture replaces another in its place; one removed meanwhile is told', async () => {
  for (const result of ['done', 'gone'] as const) {
    const board = paperBoard(BARE, result);
    board.imports.replace('m7', file('sharper.webp'));
    board.checks[0]?.settle(ready);
    await settled();
    board.sends[0]?.settle(kept);
    await settled();
    expect(board.edits).toEqual([
      { edit: 'replace image', image: 'm7', blob: HASH, widthPixels: 600, heightPixels: 400, name: 'sharper' },
    ]);
    expect(board.imports.step.get().at).toBe(result === 'done' ? 'idle' : 'failed');
  }
});

test('a world file beside a picture is asked for its unit, then brings the survey grid in the same step', async () => {
  const board = paperBoard();
  await board.imports.add([file('north.png'), new File(['0.5 0 0 -0.5 500000.25 299999.75'], 'north.pgw')]);
  board.checks[0]?.settle(ready);
  await settled();
  const step = board.imports.step.get();
  if (step.at !== 'asking unit') throw new Error(`asks for the unit, not ${step.at}`);
  expect(step.choices.map(({ unit }) => unit)).toEqual(['metres', 'US survey feet', 'international feet']);
  step.answer('metres');
  await settled();
  board.sends[0]?.settle(kept);
  await settled();
  expect(board.edits).toMatchObject([
    {
      edit: 'several',
      edits: [
        { edit: 'set grid', grid: { easting: 500_200, northing: 299_900 } },
        // 600 pixels of half a metre, the corner at (500000, 300000).
        { edit: 'add image', image: { placement: [0.5, 0, -200, 0, -0.5, 100], scaledBy: 'world file' } },
      ],
    },
  ]);
});

test('a world file that is none is told, and the picture comes without it', async () => {
  const board = paperBoard();
  await board.imports.add([file('north.png'), new File(['not numbers'], 'north.pgw')]);
  board.checks[0]?.settle(ready);
  await settled();
  board.sends[0]?.settle(kept);
  await settled();
  expect(board.said[0]).toContain('north.pgw');
  expect(board.edits).toMatchObject([{ edit: 'add image', image: { scaledBy: 'guess' } }]);
});

test('a world file that comes alone asks which picture it is for when nobody can know', async () => {
  const board = paperBoard();
  await board.imports.add([new File(['1 0 0 -1 0 0'], 'north.pgw')]);
  await settled();
  expect(board.imports.step.get()).toMatchObject({ at: 'failed', why: expect.stringContaining('Which picture') });
});

test('a board with as many pictures as it takes says so before anything is sent', async () => {
  const image = {
    id: 'm1',
    blob: HASH,
    widthPixels: 9,
    heightPixels: 9,
    placement: [1, 0, 0, 0, -1, 0],
    opacity: 1,
  } as const;
  const images = Array.from({ length: 20 }, (_, index) => ({ ...image, id: `m${index}` }));
  const board = paperBoard({ ...BARE, site: { ...BARE.site, images } });
  await board.imports.add([file('one.png')]);
  await settled();
  expect(board.imports.step.get()).toMatchObject({ at: 'failed', why: expect.stringContaining('20 pictures') });
  expect([board.checks, board.edits]).toEqual([[], []]);
});

test('a picture that the board does not take is told, not lost in silence', async () => {
  const board = paperBoard(BARE, 'nothing');
  await board.imports.add([file('one.png')]);
  board.checks[0]?.settle(ready);
  await settled();
  board.sends[0]?.settle(kept);
  await settled();
  expect(board.imports.step.get()).toMatchObject({
    at: 'failed',
    why: expect.stringContaining('too small'),
    again: true,
  });
});

test('a file’s name of any length becomes a name that is whole to its last letter', () => {
  expect(pictureName(`a${'😀'.repeat(500)}.png`)).toBe(`a${'😀'.repeat(79)}`);
  expect(pictureName('\u202egpj.exe.png')).toBe('gpj.exe');
  expect(pictureName('.png')).toBe('Picture');
});
