import { demoPlan } from '@loopwright/demo';
import { openPlan } from '@loopwright/document';
import { createPlanState } from '@loopwright/document/server';
import { expect, test } from 'vitest';
import { SERVER_LIMITS } from '../limits.ts';
import { openSqliteStore } from '../storage/sqlite.ts';
import { paperLog } from '../testing/paper-log.ts';
import { loadRoom } from './load-room.ts';

const KEY = { board: 'b1', room: 'plan' } as const;
const LIMITS = { ...SERVER_LIMITS, compactFrom: 10 };

test('loading compacts a long log and the plan stays as it was; a drop then costs at most 40 bytes', async () => {
  const store = await openSqliteStore(':memory:');
  const link = { id: 'l1', board: 'b1', secretHash: 'aa', role: 'designer', revoked: false } as const;
  const first = createPlanState(demoPlan());
  await store.addBoard({ id: 'b1', name: 'Demo', createdAt: 0 }, link, first);

  const page = openPlan(first);
  const routing = page.read().routings[0];
  const holes = routing?.holes ?? [];
  const drops = 200;
  for (let drop = 0; drop < drops; drop++) {
    const hole = holes[drop % holes.length];
    if (!routing || !hole) throw new Error('the demo has holes');
    const to = { x: 100 + drop * 1.237, y: 200 - drop * 0.811 };
    page.edit({ edit: 'move part', routing: routing.id, hole: hole.id, part: 'green', to });
    if (drop % 10 === 9) await store.append(KEY, [page.state()]);
  }

  const loaded = await loadRoom(KEY, { store, limits: LIMITS, log: paperLog() });
  expect(openPlan(loaded.state()).read()).toEqual(page.read());
  const { updates } = await store.roomLog(KEY);
  expect(updates).toHaveLength(1);
  expect(((updates[0]?.length ?? 0) - first.length) / drops).toBeLessThanOrEqual(40);
  expect(openPlan((await loadRoom(KEY, { store, limits: LIMITS, log: paperLog() })).state()).read()).toEqual(
    page.read(),
  );
});

test('a long log that cannot be compacted, as on a full disk, is opened as it is', async () => {
  const kept = await openSqliteStore(':memory:');
  const link = { id: 'l1', board: 'b1', secretHash: 'aa', role: 'designer', revoked: false } as const;
  const first = createPlanState(demoPlan());
  await kept.addBoard({ id: 'b1', name: 'Demo', createdAt: 0 }, link, first);
  await kept.append(
    KEY,
    Array.from({ length: 20 }, () => first),
  );
  const store = { ...kept, compact: () => Promise.reject(new Error('disk full')) };
  const log = paperLog();
  const loaded = await loadRoom(KEY, { store, limits: LIMITS, log });
  expect(loaded.state()).toEqual(first);
  expect(log.events).toEqual(['log-not-compacted']);
});
