import type { HoleId, Routing } from '@loopwright/model';
import { loopsOf } from '@loopwright/model';
import { checkHolePair } from '../clearance/hole-pair.ts';
import type { HoleReach } from '../clearance/hole-reach.ts';
import type { PairRelation } from '../clearance/pair-relation.ts';
import type { Finding } from '../figures.ts';
import { oneAlarm } from '../findings/one-alarm.ts';
import type { BoardInputs } from './board-inputs.ts';
import type { HoleStage } from './hole-stage.ts';
import { openMemory } from './memory.ts';

/** One alarm at most for every two holes in play; pairs of which neither hole moved are remembered. */
export function openPairStage() {
  const alarms = openMemory<Finding | undefined>();
  return (routing: Routing, order: readonly HoleId[], holes: HoleStage, board: BoardInputs): readonly Finding[] => {
    const next = nextHoles(routing);
    const reaches = [...order].sort().flatMap((id) => holes.reach(id) ?? []);
    const found: Finding[] = [];
    reaches.forEach((a, place) => {
      for (let other = place + 1; other < reaches.length; other++) {
        const b = reaches[other];
        const alarm = b && alarmOf(a, b, next, board);
        if (alarm) found.push(alarm);
      }
    });
    alarms.forgetUnused();
    return found;
  };

  function alarmOf(a: HoleReach, b: HoleReach, next: ReadonlySet<string>, { limits }: BoardInputs) {
    const pair = `${a.id}|${b.id}`;
    const isBackwards = next.has(`${b.id}|${a.id}`);
    const relation: PairRelation = isBackwards || next.has(pair) ? 'next' : 'other';
    const [first, second] = isBackwards && !next.has(pair) ? [b, a] : [a, b];
    return alarms.recall(pair, [first, second, relation, limits], () =>
      oneAlarm(pair, checkHolePair(first, second, relation, limits)),
    );
  }
}

/** Pairs `first|second` of holes of which the second is played straight after the first, in a loop or a round. */
export function nextHoles(routing: Routing): ReadonlySet<string> {
  const next = new Set<string>();
  const add = (holes: readonly HoleId[]) => {
    holes.forEach((hole, place) => {
      const after = holes[place + 1];
      if (after !== undefined) next.add(`${hole}|${after}`);
    });
  };
  for (const { holes } of routing.loops) add(holes);
  for (const round of routing.rounds) add(loopsOf(routing, round).flatMap(({ holes }) => holes));
  return next;
}
