import { METRES_PER_YARD, settingsOf } from '@loopwright/model';
import { expect, test } from 'vitest';
import { CLUBS, reachArcs } from './reach-arcs.ts';
import { reachLine } from './reach-line.ts';
import { reachPicture } from './reach-picture.ts';
import { clubWords } from './reach-words.ts';

const yards = (metres: number) => Math.round((metres / METRES_PER_YARD) * 100) / 100;
const settings = settingsOf({});
const at = (x: number, y: number) => ({ x, y });

// The Modern Guide to Golf Club Fitting, chapter on tees: clubs as shares of the driver. By hand for a driver of 215 yd:
// 0.93, 0.73, 0.64 and 0.49 of it are 199.95, 156.95, 137.60 and 105.35 yd.
test('arcs lie at the published shares of the drive', () => {
  const average = settingsOf({ 'scratch-man-drive': 215 * METRES_PER_YARD });
  const arcs = reachArcs(['scratch man'], ['3 wood', '5 iron', '7 iron', 'pitching wedge'], average, 'tee');
  expect(arcs.map(({ club, distance }) => [club, yards(distance)])).toEqual([
    ['3 wood', 199.95],
    ['5 iron', 156.95],
    ['7 iron', 137.6],
    ['pitching wedge', 105.35],
  ]);
});

// Course Rating System: tee shots of 250, 200, 210 and 150 yd; second shots of 220, 170, 190 and 130 yd.
test('each model player drives the published distance, and reaches on from a turn as in two less the tee shot', () => {
  const players = ['scratch man', 'bogey man', 'scratch woman', 'bogey woman'] as const;
  expect(reachArcs(players, ['driver'], settings, 'tee').map(({ distance }) => yards(distance))).toEqual([
    250, 200, 210, 150,
  ]);
  const on = reachArcs(players, ['driver', '3 wood'], settings, 'turn');
  expect(on.map(({ club, distance }) => [club, yards(distance)])).toEqual(
    [220, 170, 190, 130].map((second) => ['second full shot', second]),
  );
});

// 235 yd is nearest to the 3 wood of a 250 yd driver: 232.5. 250 + 142 leaves 142 yd: 9 iron 135, 8 iron 147.5.
test('the club for a distance is said, and past one shot what is left', () => {
  const say = (distance: number) => clubWords(distance * METRES_PER_YARD, 'scratch man', settings, 'tee', 'yards');
  expect(say(235)).toBe('scratch man: 3 wood');
  expect(say(60)).toBe('scratch man: part shot');
  expect(say(392)).toBe('scratch man: driver, leaves 142 yd: 8 iron');
  expect(say(600)).toBe('scratch man: driver, leaves 350 yd: more than one full shot');
});

test('beyond the drive the hole that is left turns where it lands; nearer it is straight', () => {
  // A drive of 228.6 m; landing areas within 60 m of the green are left to it.
  expect(reachLine([at(0, 0)], at(0, 280), 'scratch man', settings)).toEqual([at(0, 0), at(0, 280)]);
  expect(reachLine([at(0, 0)], at(0, 400), 'scratch man', settings)).toEqual([at(0, 0), at(0, 228.6), at(0, 400)]);
  const turned = [at(0, 0), at(0, 220)];
  expect(reachLine(turned, at(90, 400), 'scratch man', settings)).toEqual([...turned, at(90, 400)]);
  expect(reachLine([at(5, 5)], at(5, 5), 'scratch man', settings)).toEqual([at(5, 5), at(5, 5)]);
});

test('labels stand where there is room, the drives always among them', () => {
  const players = ['scratch man', 'bogey man', 'scratch woman', 'bogey woman'] as const;
  const shown = {
    path: [at(0, 0)],
    aim: { at: at(200, 90) },
    players,
    clubs: CLUBS,
    settings,
    units: 'metres',
  } as const;
  const small = reachPicture({ ...shown, scale: 0.7 }).words ?? [];
  const large = reachPicture({ ...shown, scale: 4 }).words ?? [];
  for (const { length } of [small, large]) expect(length).toBeGreaterThanOrEqual(4);
  expect(small.length).toBeLessThan(large.length);
  for (const player of players) expect(small.some(({ text }) => text.startsWith(`${player}, driver`))).toBe(true);
});
