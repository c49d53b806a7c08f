import type { NamedEdit } from '@loopwright/document';
import type { Plan, Routing } from '@loopwright/model';
import { differing, lostOrDoubled, type Peer } from '@loopwright/testkit';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { HOLES } from './board-plan.ts';
import { openBoard } from './open-board.ts';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'Date'] });
});
afterEach(() => {
  vi.useRealTimers();
});

const advance = (milliseconds: number) => vi.advanceTimersByTimeAsync(milliseconds);

/** Two people who have met, and what they do before the other hears of it. */
async function atOnce(seed: number, adas: (ada: Peer) => void, graces: (grace: Peer) => void) {
  const { peers, close } = openBoard(seed, ['m0', 'm1']);
  const [ada, grace] = peers;
  if (!ada || !grace) throw new Error('two pages were opened');
  await advance(3000);
  adas(ada);
  graces(grace);
  await advance(5000);
  const plans = new Map(peers.map(({ name, plan }) => [name, plan.read()]));
  expect(differing(plans)).toEqual([]);
  const plan = ada.plan.read();
  expect(lostOrDoubled(plan, 'a', HOLES)).toEqual([]);
  return { ada, grace, plan, close };
}

const first = (plan: Plan): Routing => {
  const [routing] = plan.routings;
  if (!routing) throw new Error('no routing');
  return routing;
};
const order = (plan: Plan, loop = 'out') => first(plan).loops.find(({ id }) => id === loop)?.holes;
const moveGreen = (hole: string, x: number, routing = 'a'): NamedEdit => {
  return { edit: 'move part', routing, hole, part: 'green', to: { x, y: 410 } };
};
const draw = (hole: string): NamedEdit => ({
  edit: 'draw hole',
  routing: 'a',
  hole,
  seat: { loop: 'out', after: 'h1' },
  tees: { back: { x: 0, y: 0 } },
  turnPoints: [],
});
const split: NamedEdit = {
  edit: 'split loop',
  routing: 'a',
  loop: 'out',
  after: 'h1',
  as: { id: 'rest', name: 'Rest' },
};

test('somebody removes the hole another is dragging: the drag shows nothing, the drop says gone, undo brings all of it back', async () => {
  const { peers, close } = openBoard(11, ['m0', 'm1']);
  const [ada, grace] = peers;
  if (!ada || !grace) throw new Error('two pages were opened');
  await advance(3000);
  ada.connection.presence.say({ selection: ['h1'], drag: moveGreen('h1', 150) });
  await advance(300);
  grace.plan.edit({ edit: 'remove hole', routing: 'a', hole: 'h1' });
  await advance(1000);
  const [drag] = grace.connection.presence.others();
  expect(drag?.drag).toBeDefined();
  for (const { plan } of peers) expect(plan.readWith([moveGreen('h1', 150)])).toBe(plan.read());
  expect(ada.plan.edit(moveGreen('h1', 150))).toBe('gone');
  grace.plan.undo();
  await advance(2000);
  expect(order(ada.plan.read())).toEqual(['h1', 'h2', 'h3']);
  expect(ada.plan.edit(moveGreen('h1', 150))).toBe('done');
  close();
});

test('two people draw a hole into the same place: both are in the loop, in one order everywhere, and there is room between', async () => {
  const { ada, grace, plan, close } = await atOnce(
    12,
    ({ plan }) => plan.edit(draw('adas')),
    ({ plan }) => plan.edit(draw('graces')),
  );
  expect(order(plan)).toEqual(['h1', 'adas', 'graces', 'h2', 'h3']); // equal keys go by id
  expect(grace.plan.edit({ edit: 'bring back', routing: 'a', hole: 'h7', loop: 'out', after: 'adas' })).toBe('done');
  await advance(3000);
  expect(order(ada.plan.read())).toEqual(['h1', 'adas', 'h7', 'graces', 'h2', 'h3']);
  close();
});

test('a loop is split while another moves a hole in it: the hole sits once, in one of the two', async () => {
  const { plan, close } = await atOnce(
    13,
    ({ plan }) => plan.edit(split),
    ({ plan }) => plan.edit({ edit: 'move in the round', routing: 'a', hole: 'h3', loop: 'out', after: 'first' }),
  );
  expect([...(order(plan) ?? []), ...(order(plan, 'rest') ?? [])].sort()).toEqual(['h1', 'h2', 'h3']);
  expect(first(plan).rounds[0]?.loops).toEqual(['out', 'rest', 'in']);
  close();
});

test('a loop is removed while another draws a hole into it: the hole is in the tray with the others', async () => {
  const { plan, close } = await atOnce(
    14,
    ({ plan }) => plan.edit({ edit: 'remove loop', routing: 'a', loop: 'out' }),
    ({ plan }) => plan.edit(draw('late')),
  );
  expect([...first(plan).spare].sort()).toEqual(['h1', 'h2', 'h3', 'h7', 'late']);
  close();
});

test('a routing is copied while it is edited: the copy is the one its maker saw, and the edit stays in the first', async () => {
  const { plan, close } = await atOnce(
    15,
    ({ plan }) => plan.edit({ edit: 'copy routing', routing: 'a', as: 'b', name: 'B' }),
    ({ plan }) => plan.edit(moveGreen('h1', 150)),
  );
  const greens = plan.routings.map(({ holes }) => holes.find(({ id }) => id === 'h1')?.green?.centre.x);
  expect(greens).toEqual([150, 90]);
  close();
});

test('two people exchange the same corridors at once: one exchange, not two', async () => {
  const exchange: NamedEdit = { edit: 'exchange corridors', routing: 'a', hole: 'h1', with: 'h2' };
  const { plan, close } = await atOnce(
    16,
    ({ plan }) => plan.edit(exchange),
    ({ plan }) => plan.edit({ ...exchange, hole: 'h2', with: 'h1' }),
  );
  const [one, two] = first(plan).holes;
  expect([one?.tees.back?.x, two?.tees.back?.x]).toEqual([250, 0]);
  close();
});

test('one removes a routing, the other the other one: none is left, nobody breaks, and undo brings them back', async () => {
  const { ada, grace, plan, close } = await atOnce(
    17,
    ({ plan }) => plan.edit({ edit: 'copy routing', routing: 'a', as: 'b', name: 'B' }),
    () => undefined,
  );
  expect(plan.routings.length).toBe(2);
  ada.plan.edit({ edit: 'remove routing', routing: 'a' });
  grace.plan.edit({ edit: 'remove routing', routing: 'b' });
  await advance(3000);
  expect(grace.plan.read().routings).toEqual([]);
  expect(grace.plan.edit(draw('late'))).toBe('gone');
  ada.plan.undo();
  await advance(3000);
  expect(grace.plan.read().routings.map(({ id }) => id)).toEqual(['a']);
  close();
});

test('everything is deleted while another draws: the board is read, and what was drawn is in the tray', async () => {
  const { plan, close } = await atOnce(
    18,
    ({ plan }) => {
      for (const hole of HOLES) plan.edit({ edit: 'remove hole', routing: 'a', hole });
      for (const loop of ['out', 'in']) plan.edit({ edit: 'remove loop', routing: 'a', loop });
      plan.edit({ edit: 'remove features', features: ['pond'] });
      plan.edit({ edit: 'remove base', base: 'house' });
    },
    ({ plan }) => plan.edit(draw('late')),
  );
  expect(first(plan).loops).toEqual([]);
  expect(first(plan).spare).toEqual(['late']);
  expect(plan.site.features).toEqual([]);
  close();
});
