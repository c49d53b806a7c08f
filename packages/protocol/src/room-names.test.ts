import { expect, test } from 'vitest';
import { offlineName, parseRoomPath, roomPath } from './room-names.ts';

test('a room path comes back as the same room (R1)', () => {
  const name = { board: 'k3x', membership: 'm-1_A', room: 'plan' } as const;
  expect(parseRoomPath(`/sync/${roomPath(name)}`)).toEqual(name);
  expect(parseRoomPath(roomPath(name))).toEqual(name);
});

test.each(['/sync/a/b', '/sync/a/b/other', '/sync/../b/plan', '/sync/a//plan', '/sync/a/b/plan/c', ''])(
  '%j names no room (R1)',
  (path) => {
    expect(parseRoomPath(path)).toBeUndefined();
  },
);

test('local copies of two memberships or two epochs never share a name', () => {
  const names = [
    offlineName({ board: 'b', membership: 'm', room: 'plan' }, 1),
    offlineName({ board: 'b', membership: 'm', room: 'plan' }, 2),
    offlineName({ board: 'b', membership: 'n', room: 'plan' }, 1),
  ];
  expect(new Set(names).size).toBe(3);
});
