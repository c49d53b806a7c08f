import type { HoleId, Routing } from '@loopwright/model';
import { playingOrder } from '@loopwright/model';
import { checkHolePair } from '../clearance/hole-pair.ts';
import type { HoleReach } from '../clearance/hole-reach.ts';
import type { PairRelation } from '../clearance/pair-relation.ts';
import type { Finding } from '../figures.ts';
import { oneAlarm } from '../findings/one-alarm.ts';
import type { BoardInputs } from './board-inputs.ts';
import type { HoleStage } from './hole-stage.ts';

/** The alarms of one hole with others, kept for as long as both holes are what they were. */
type Alarms = WeakMap<HoleReach, Finding | 'none'>;

/**
 * One alarm at most for every two holes in play; pairs of which neither hole moved are remembered.
 *
 * Remembered by the holes' own objects and without any names: there are 153 pairs in every frame.
 */
export function openPairStage() {
  const known: Readonly<Record<PairRelation, WeakMap<HoleReach, Alarms>>> = {
    next: new WeakMap(),
    other: new WeakMap(),
  };
  return (routing: Routing, order: readonly HoleId[], holes: HoleStage, board: BoardInputs): readonly Finding[] => {
    const next = nextHoles(routing);
    const reaches = [...order].sort().flatMap((id) => holes.reach(id) ?? []);
    const found: Finding[] = [];
    for (let place = 0; place < reaches.length; place++) {
      const a = reaches[place];
      const afterA = a && next.get(a.id);
      for (let other = place + 1; other < reaches.length; other++) {
        const b = reaches[other];
        if (!a || !b) continue;
        const alarm = afterA?.has(b.id)
          ? alarmOf(a, b, 'next', board)
          : next.get(b.id)?.has(a.id)
            ? alarmOf(b, a, 'next', board)
            : alarmOf(a, b, 'other', board);
        if (alarm !== 'none') found.push(alarm);
      }
    }
    return found;
  };

  function alarmOf(first: HoleReach, second: HoleReach, relation: PairRelation, board: BoardInputs): Finding | 'none' {
    let alarms = known[relation].get(first);
    if (!alarms) {
      alarms = new WeakMap();
      known[relation].set(first, alarms);
    }
    let alarm = alarms.get(second);
    if (alarm === undefined) {
      const pair = [first.id, second.id].sort().join('|');
      alarm = oneAlarm(pair, checkHolePair(first, second, relation, board.limits)) ?? 'none';
      alarms.set(second, alarm);
    }
    return alarm;
  }
}

/** The holes that are played straight after each hole, in its loop or in a round. */
export function nextHoles(routing: Routing): ReadonlyMap<HoleId, ReadonlySet<HoleId>> {
  const next = new Map<HoleId, Set<HoleId>>();
  const add = (holes: readonly HoleId[]) => {
    holes.forEach((hole, place) => {
      const after = holes[place + 1];
      if (after === undefined) return;
      const known = next.get(hole) ?? new Set();
      next.set(hole, known.add(after));
    });
  };
  for (const { holes } of routing.loops) add(holes);
  for (const round of routing.rounds) add(playingOrder(routing, round));
  return next;
}
