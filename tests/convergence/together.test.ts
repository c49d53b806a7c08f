import { parseNamedEdit } from '@loopwright/document';
import { holeOf, type Plan } from '@loopwright/model';
import type { Peer } from '@loopwright/testkit';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openBoard } from './open-board.ts';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'Date'] });
});
afterEach(() => {
  vi.useRealTimers();
});

const advance = (milliseconds: number) => vi.advanceTimersByTimeAsync(milliseconds);

const greenX = (plan: Plan): number | undefined => {
  const [routing] = plan.routings;
  return routing && holeOf(routing, 'h1')?.green?.centre.x;
};
const moveGreen = (x: number) =>
  ({ edit: 'move part', routing: 'a', hole: 'h1', part: 'green', to: { x, y: 410 } }) as const;
/** What a page shows: the plan with everybody's drags laid over it. */
const shown = ({ plan, connection }: Peer) =>
  greenX(plan.readWith(connection.presence.others().flatMap(({ drag }) => drag ?? [])));

test.each([1, 2, 3, 4, 5, 6, 7, 8])(
  'P6: on another screen a dragged green only ever goes on, also at the drop (seed %i)',
  async (seed) => {
    const { peers, close } = openBoard(seed, ['m0', 'm1']);
    const [ada, grace] = peers;
    if (!ada || !grace) throw new Error('two pages were opened');
    await advance(3000);
    const seen: number[] = [];
    const watch = async (milliseconds: number) => {
      for (let passed = 0; passed < milliseconds; passed += 5) {
        await advance(5);
        seen.push(shown(grace) ?? 0);
      }
    };
    for (let x = 100; x <= 200; x += 2) {
      ada.connection.presence.say({ selection: ['h1'], drag: moveGreen(x) });
      await watch(20);
    }
    ada.plan.edit(moveGreen(200));
    ada.connection.presence.say({ selection: ['h1'] });
    await watch(2000);
    expect(seen).toEqual([...seen].sort((a, b) => a - b));
    expect(seen.at(-1)).toBe(200);
    expect(new Set(seen).size).toBeGreaterThan(10); // it moved, rather than jumped
    expect(grace.connection.presence.others()[0]?.drag).toBeUndefined();
    close();
  },
);

test('P7: a line that breaks in mid-drag leaves the plan as it was', async () => {
  const { network, peers, close } = openBoard(3, ['m0', 'm1']);
  const [ada, grace] = peers;
  if (!ada || !grace) throw new Error('two pages were opened');
  await advance(3000);
  ada.connection.presence.say({ selection: [], drag: moveGreen(180) });
  await advance(1000);
  expect(shown(grace)).toBe(180);
  network.setDown('m0', true);
  await advance(4000);
  expect(shown(grace)).toBe(90);
  expect(greenX(ada.plan.read())).toBe(90);
  close();
});

test('X4: a reader’s change is refused, said in words, and handed back as a draft', async () => {
  const { peers, close, server } = openBoard(4, ['m0', 'reader']);
  const [ada, reader] = peers;
  if (!ada || !reader) throw new Error('two pages were opened');
  await advance(3000);
  expect(reader.connection.saved()).toEqual({ kind: 'saved' });
  reader.plan.edit(moveGreen(180));
  await advance(3000);
  expect(reader.closed()?.code).toBe(4403);
  expect(reader.closed()?.draft).toEqual(reader.plan.state());
  expect(reader.connection.saved()).toEqual({ kind: 'closed', code: 4403 });
  await advance(60_000);
  expect(reader.connection.saved()).toEqual({ kind: 'closed', code: 4403 }); // and it is not tried again
  expect(greenX(ada.plan.read())).toBe(90);
  expect(server.holds(reader.plan.state())).toBe(false);
  close();
});

test('close the lid, work on, come back: nothing is lost, and the head says so all the way', async () => {
  const { network, peers, close } = openBoard(5, ['m0', 'm1']);
  const [ada, grace] = peers;
  if (!ada || !grace) throw new Error('two pages were opened');
  await advance(3000);
  network.setDown('m0', true);
  await advance(500);
  ada.plan.edit(moveGreen(150));
  grace.plan.edit({ edit: 'move part', routing: 'a', hole: 'h1', part: 'tee:back', to: { x: -9, y: -9 } });
  expect(ada.connection.saved()).toEqual({ kind: 'offline', kept: false, waiting: 1 });
  await advance(60_000);
  expect(ada.connection.saved()).toEqual({ kind: 'offline', kept: false, waiting: 1 });
  network.setDown('m0', false);
  await advance(40_000);
  for (const { plan, connection } of peers) {
    expect(connection.saved()).toEqual({ kind: 'saved' });
    const [routing] = plan.read().routings;
    expect(routing && holeOf(routing, 'h1')).toMatchObject({
      green: { centre: { x: 150, y: 410 } },
      tees: { back: { x: -9, y: -9 } },
    });
  }
  close();
});

test('the server dies with a change on its way: the page says saving until a later life has it', async () => {
  const { peers, server, close } = openBoard(6, ['m0']);
  const [ada] = peers;
  if (!ada) throw new Error('a page was opened');
  await advance(3000);
  ada.plan.edit(moveGreen(150));
  expect(ada.connection.saved()).toEqual({ kind: 'saving', waiting: 1 });
  server.restart();
  await advance(20);
  expect(server.holds(ada.plan.state())).toBe(false);
  expect(ada.connection.saved().kind).not.toBe('saved');
  await advance(40_000);
  expect(ada.connection.saved()).toEqual({ kind: 'saved' });
  expect(server.holds(ada.plan.state())).toBe(true);
  close();
});

test('a drag crosses as the edit it would make, in under 300 bytes', () => {
  const drag = moveGreen(123.456);
  expect(JSON.stringify({ selection: ['h1'], routing: 'a', drag }).length).toBeLessThan(300);
  expect(parseNamedEdit(JSON.parse(JSON.stringify(drag)))).toEqual(drag);
});
