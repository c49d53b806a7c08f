import { isId, LIMITS, parsePoint } from '@loopwright/model';
import { parsePlacedTurn } from '../reading/read-hole.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { cellsOfHole } from './hole-parts.ts';
import { openHole } from './open-hole.ts';
import { placeAfter } from './order.ts';

/**
 * Gives a hole one more turn in its line of play, after `place` others. A place beyond the last is the last.
 *
 * @returns `nothing` on a hole that has as many turns as it can, or that one already
 * @throws RangeError if the id or the place cannot be read: the caller's bug
 */
export function addTurnPoint(edit: EditNamed<'add turn point'>, reading: Reading): EditWrites {
  const at = parsePoint(edit.at);
  if (at === undefined || !isId(edit.turn) || !Number.isInteger(edit.place))
    throw new RangeError('add turn point: the place must be finite and on the site plane, and the id an id');
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const { routing, hole } = open;
  const isThere = hole.turnPoints.some(({ id }) => id === edit.turn);
  if (isThere || hole.turnPoints.length >= LIMITS.turnPointsPerHole) return 'nothing';
  const parts = cellsOfHole(reading, routing.id, hole.id);
  const turns = hole.turnPoints.map((turn) => {
    const order = parsePlacedTurn(turn.id, parts.get(`turn:${turn.id}`))?.order ?? 'a0';
    return { ...turn, key: order };
  });
  const before = Math.min(Math.max(edit.place, 0), turns.length);
  const { key, rekeyed } = placeAfter(turns, before - 1);
  const fresh = new Map(rekeyed.map((turn) => [turn.id, turn.key]));
  return [
    open.write(`turn:${edit.turn}`, { ...at, order: key }),
    ...turns.flatMap((turn) => {
      const order = fresh.get(turn.id);
      return order === undefined ? [] : [open.write(`turn:${turn.id}`, { x: turn.at.x, y: turn.at.y, order })];
    }),
  ];
}
