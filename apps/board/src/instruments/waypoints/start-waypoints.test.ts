import type { Analysis } from '@loopwright/analysis';
import type { Routing, SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import { openSlot } from '../../live/slot.ts';
import { ANALYSIS, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { startWaypoints, type WaypointUse } from './start-waypoints.ts';
import { ledThrough, walkNear } from './walk-line.ts';

const at = (x: number, y: number) => ({ x, y });
const PATHS: Readonly<Record<string, readonly SitePoint[]>> = {
  'house>h1': [at(900, 0), at(900, 50)],
  'h1>h2': [at(10, 0), at(100, 0)],
};
const analysis: Analysis = {
  ...ANALYSIS,
  walks: ANALYSIS.walks.map((walk) => ({ ...walk, path: PATHS[walk.key] ?? [] })),
};
/** Round, about the start of the walk. */
const green = { centre: at(0, 0), length: 20, width: 20, bearing: 0 };
const routingWith = (...waypoints: readonly SitePoint[]) => ({
  ...ROUTING,
  holes: ROUTING.holes.map((hole) => (hole.id === 'h1' ? { ...hole, green, waypoints } : hole)),
});

function openInHand(routing: Routing = routingWith(), first: WaypointUse = 'lead') {
  const board = openFakeBench({ routing });
  const use = openSlot<WaypointUse>(first);
  return { ...board, running: startWaypoints({ ...board.bench, analysis: () => analysis }, use) };
}
const led = (...waypoints: readonly SitePoint[]) => ({ edit: 'set waypoints', routing: 'a', hole: 'h1', waypoints });

test('the nearest walk from a green is led through the place, in the leg it is nearest to', () => {
  const walk = walkNear(routingWith(at(50, 30)), analysis, at(80, 20));
  expect(walk && ledThrough(walk, at(80, 20))).toEqual([at(50, 30), at(80, 20)]);
  expect(walk && ledThrough(walk, at(20, 20))).toEqual([at(20, 20), at(50, 30)]);
  // The walk from the base is nearer, but no hole keeps its waypoints.
  expect(walkNear(routingWith(), analysis, at(900, 20))?.hole).toBe('h1');
});

test('the new way is shown as it would be, with its length, and a press writes it', () => {
  const { running, written, shown } = openInHand();
  running.hover(mouseAt(50, 50));
  expect(shown()).toEqual(led(at(50, 50)));
  // Twice the diagonal of a square of 50 m less the green's radius of 10 m: 2 · 70.71 − 10 = 131.4 m.
  expect(running.picture.get().atPointer).toEqual(['walk from green 1', '131 m']);
  running.press(mouseAt(50, 50), undefined);
  expect(written).toEqual([led(at(50, 50))]);
  expect(shown()).toBeUndefined();
});

test('what is shown already is not led through twice', () => {
  const shown = { hole: 'h1', at: at(50, 50) };
  const walk = walkNear(routingWith(at(50, 50)), analysis, at(60, 50), shown);
  expect(walk && ledThrough(walk, at(60, 50))).toEqual([at(60, 50)]);
});

test('a place may be typed; a length is none', () => {
  const { running, written } = openInHand();
  expect(running.enter?.('50, 50')).toBeUndefined();
  expect(running.enter?.('50')).toMatch(/Type where/);
  expect(written).toEqual([led(at(50, 50))]);
});

test('a waypoint is taken out by a press on it', () => {
  const { running, written, said } = openInHand(routingWith(at(20, 20), at(50, 30)), 'take out');
  running.press(mouseAt(52, 31), undefined);
  running.press(mouseAt(300, 300), undefined);
  expect(written).toEqual([led(at(20, 20))]);
  expect(said.at(-1)).toMatch(/no waypoint/);
});

test('a locked routing keeps its walks, and so does one without any', () => {
  const { running, written, said } = openInHand({ ...routingWith(), locked: true });
  running.hover(mouseAt(50, 50));
  running.press(mouseAt(50, 50), undefined);
  expect(written).toEqual([]);
  expect(said.at(-1)).toMatch(/locked/);
});
