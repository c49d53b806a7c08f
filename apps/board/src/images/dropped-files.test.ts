import { expect, test } from 'vitest';
import { sortFiles, worldFileFor } from './dropped-files.ts';

const PNG = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]);
const names = (files: readonly File[]) => files.map(({ name }) => name);

test('files are sorted by what they hold, then by what they are called', async () => {
  const sorted = await sortFiles([
    new File([PNG], 'no ending'),
    new File(['PK zip'], 'zip.png'),
    new File(['0.5'], 'aerial.PGW'),
    new File(['{}'], 'course.geojson'),
    new File([PNG], 'picture.json'),
    new File(['%PDF'], 'plan.pdf'),
  ]);
  expect(names(sorted.pictures)).toEqual(['no ending', 'zip.png', 'picture.json', 'plan.pdf']);
  expect(names(sorted.worldFiles)).toEqual(['aerial.PGW']);
  expect(names(sorted.others)).toEqual(['course.geojson']);
});

test('a world file goes with the picture of its name, and a single one with a single picture', async () => {
  const [north, south] = [new File([PNG], 'north.jpg'), new File([PNG], 'south.png')];
  const both = await sortFiles([north, south, new File(['1'], 'South.pgw'), new File(['1'], 'north.jpg.wld')]);
  expect(worldFileFor(north, both)?.name).toBe('north.jpg.wld');
  expect(worldFileFor(south, both)?.name).toBe('South.pgw');
  const one = await sortFiles([north, new File(['1'], 'other.jgw')]);
  expect(worldFileFor(north, one)?.name).toBe('other.jgw');
  expect(worldFileFor(north, await sortFiles([north, south, new File(['1'], 'other.jgw')]))).toBeUndefined();
});
