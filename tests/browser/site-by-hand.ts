// A site set up from a picture, with figures worked by hand beside each step. Clicks and taps do the same.
import type { Plan, Ring, SitePoint } from '@loopwright/model';
import { expect } from 'vitest';
import { openSheet, savedWords } from './board-page.ts';
import type { CountedHand } from './counted-hand.ts';

const WITHIN = { timeout: 15_000, interval: 50 };
/** Metres. A hand presses whole pixels, and one is two and a half metres when all of the picture is in view. */
const HAND = 4;
/** Metres to which what lies near may pull a point besides: on purpose, and said at the pointer. */
const PULLED = 8;

const at = (x: number, y: number): SitePoint => ({ x, y });
const instrument = ({ page }: CountedHand, name: string) =>
  page.getByRole('toolbar', { name: 'Instruments' }).getByRole('button', { name, exact: true });

/**
 * The picture is 1,600 pixels square. It is laid 1,200 m wide about the middle until somebody knows better, so that pixel
 * (column, row) lies at (0.75 column − 600, 600 − 0.75 row): the two ends, pixels (200, 1200) and (1400, 1200), at
 * (−450, −300) and (450, −300). They are 1,200 pixels apart; told that this is 1,200 m, a pixel is one metre, and as the
 * first end stays, the upper left corner comes to (−450 − 200, −300 + 1200) = (−650, 900).
 */
export const PICTURE = { size: 1600, ends: [at(-450, -300), at(450, -300)], metres: '1200' } as const;

export async function scalePicture(hand: CountedHand): Promise<void> {
  const { page } = hand;
  const note = page.getByRole('complementary', { name: 'Not to scale yet' });
  await hand.on(note.getByRole('button', { name: 'Give a known distance' }));
  for (const end of PICTURE.ends) await hand.at(end);
  await page.getByLabel('Its true length').focus();
  await hand.type(PICTURE.metres);
  await hand.key('Enter');
  await note.waitFor({ state: 'detached' });
  await hand.key('0');
}

/**
 * North is a line of 200 m east and 200 √3 m north from its foot, 30° from the top of the paper. Nothing is drawn yet, so
 * the picture is turned about the foot until north is up: a column more goes (cos 30°, sin 30°) = (0.866, 0.5) then, a row
 * more (0.5, −0.866). The corner lay 750 m west and 1,100 m north of the foot; now it is at
 * (100 − 0.866 · 750 − 0.5 · 1100, −200 − 0.5 · 750 + 0.866 · 1100) = (−1099.5, 377.6).
 */
const NORTH = [at(100, -200), at(300, -200 + 200 * Math.sqrt(3))] as const;

export async function drawNorth(hand: CountedHand): Promise<void> {
  await hand.on(instrument(hand, 'North'));
  for (const end of NORTH) await hand.at(end);
}

export function expectLaid({ site: { images, north } }: Plan): void {
  expect(north).toBe(0);
  expect(images).toHaveLength(1);
  const [image] = images;
  expect(image).toMatchObject({ widthPixels: 1600, heightPixels: 1600, scaledBy: 'two points' });
  const [a = 0, b, c = 0, d, e, f = 0] = image?.placement ?? [];
  for (const [index, value] of [0.866, 0.5, 0.5, -0.866].entries()) expect([a, b, d, e][index]).toBeCloseTo(value, 2);
  expectNear({ x: c, y: f }, at(-1099.5, 377.6), 5 * HAND);
}

/** Its sides along the paper's edges are 1,320 m and 1,100 m, 1,080 m apart: (1320 + 1100) ÷ 2 × 1080 = 1,306,800 m². */
const CORNERS = [at(-620, -660), at(700, -660), at(700, 420), at(-400, 420)];
const AREA = 1_306_800;

export async function drawBoundary(hand: CountedHand): Promise<void> {
  await hand.on(instrument(hand, 'Boundary'));
  for (const corner of CORNERS) await hand.at(corner);
  await hand.at(CORNERS[0] ?? at(0, 0));
  await hand.page.getByText("first corner of someone else's land").waitFor();
}

export function expectBoundary({ site: { boundary } }: Plan): void {
  expect(boundary?.outlines).toHaveLength(1);
  expect(boundary?.inner).toEqual([]);
  const ring = boundary?.outlines[0] ?? [];
  expect(ring).toHaveLength(CORNERS.length);
  for (const [index, corner] of CORNERS.entries()) expectNear(ring[index], corner);
  expect(Math.abs(areaOf(ring) / AREA - 1)).toBeLessThan(0.01);
}

const APRON = at(-560, -400);

export async function putBase(hand: CountedHand): Promise<void> {
  await hand.on(instrument(hand, 'Base'));
  await hand.at(APRON);
  await hand.page.getByText('first corner of a footprint').waitFor();
}

export function expectBase({ site: { bases } }: Plan): void {
  expect(bases).toHaveLength(1);
  expect(bases[0]).toMatchObject({ name: 'Clubhouse', footprints: [] });
  expectNear(bases[0]?.apron, APRON, PULLED);
}

/** A pond of 120 by 100 m, a road across, a landmark; 15 m are kept around the pond. */
const POND = [at(100, -300), at(220, -300), at(220, -200), at(100, -200)];
const ROAD = [at(-300, 380), at(600, 400)];
const TREE = at(-200, 100);

export async function drawFeatures(hand: CountedHand): Promise<void> {
  const { page } = hand;
  const kind = page.getByRole('region', { name: 'Feature' }).getByLabel('Kind');
  await hand.on(instrument(hand, 'Feature'));
  await hand.choose(kind, 'public road');
  await hand.at(ROAD[0] ?? TREE);
  await hand.at(ROAD[1] ?? TREE, 2);
  await hand.choose(kind, 'landmark');
  await hand.at(TREE);
  await hand.choose(kind, 'water');
  for (const corner of POND) await hand.at(corner);
  await hand.at(POND[0] ?? TREE);
  await hand.key('Escape');
  await openSheet(page, 'Site');
  const buffer = page.getByLabel(/kept around it/i);
  await hand.on(buffer);
  await page.keyboard.press('Control+a');
  await hand.type('15');
  await hand.key('Enter');
}

export function expectFeatures({ site: { features } }: Plan): void {
  const [road, tree, pond] = ['public road', 'landmark', 'water'].map((kind) =>
    features.find((feature) => feature.kind === kind),
  );
  expect(features).toHaveLength(3);
  if (road?.geometry.type !== 'line' || tree?.geometry.type !== 'point' || pond?.geometry.type !== 'area') {
    throw new Error(`not a line, a point and an area: ${JSON.stringify(features)}`);
  }
  expect(road.geometry.points).toHaveLength(2);
  for (const [index, end] of ROAD.entries()) expectNear(road.geometry.points[index], end);
  expectNear(tree.geometry.at, TREE);
  expect(pond.geometry.rings).toHaveLength(1);
  for (const [index, corner] of POND.entries()) expectNear(pond.geometry.rings[0]?.[index], corner);
  expect(pond.buffer).toBeCloseTo(15, 3);
  expect(pond.allows).toMatchObject({ carry: true, build: false });
}

const GREEN_SITE = at(520, -70);
const LANDING = at(-260, -600);

export async function markSites(hand: CountedHand): Promise<void> {
  const { page } = hand;
  await hand.on(instrument(hand, 'Site mark'));
  await hand.at(GREEN_SITE);
  const strip = page.getByRole('region', { name: 'Site mark' });
  await hand.on(strip.getByRole('radio', { name: 'Landing ground' }));
  await hand.on(strip.getByRole('radio', { name: 'Needs work' }));
  await hand.at(LANDING);
  await hand.key('Escape');
}

export function expectMarks({ site: { marks } }: Plan): void {
  expect(marks).toHaveLength(2);
  const [green, landing] = ['green site', 'landing ground'].map((kind) => marks.find((mark) => mark.kind === kind));
  expect(green?.verdict).toBe('natural');
  expect(landing?.verdict).toBe('needs work');
  expectNear(green?.at, GREEN_SITE);
  expectNear(landing?.at, LANDING);
}

/** Until the server has all of it. */
export async function saved({ page }: CountedHand): Promise<void> {
  await expect.poll(() => savedWords(page), WITHIN).toContain('saved on the server');
}

export function expectNear(found: SitePoint | undefined, meant: SitePoint, within = HAND): void {
  const [x, y] = [(found?.x ?? Number.NaN) - meant.x, (found?.y ?? Number.NaN) - meant.y];
  expect(Math.sqrt(x * x + y * y), `${JSON.stringify(found)} is not ${JSON.stringify(meant)}`).toBeLessThan(within);
}

/** The shoelace formula, in square metres. */
function areaOf(ring: Ring): number {
  const twice = ring.reduce((sum, { x, y }, index) => {
    const next = ring[(index + 1) % ring.length] ?? { x, y };
    return sum + x * next.y - next.x * y;
  }, 0);
  return Math.abs(twice) / 2;
}
