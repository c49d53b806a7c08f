import type { NamedEdit } from '@loopwright/document';
import { LIMITS, type LoopId, loopsOf, playingOrder, type Round, type RoundId, type Routing } from '@loopwright/model';

/** A round as its editor shows it: its loops in order, each place by itself, since a loop may be played twice. */
export interface RoundRow {
  readonly id: string;
  readonly name: string;
  readonly places: readonly { readonly key: string; readonly loop: LoopId; readonly name: string }[];
  /** '18 holes'. */
  readonly holes: string;
}

export function toRoundRows(routing: Routing): readonly RoundRow[] {
  return routing.rounds.map((round) => {
    const holes = playingOrder(routing, round).length;
    return {
      id: round.id,
      name: round.name,
      places: loopsOf(routing, round).map(({ id, name }, place) => ({ key: `${place} ${id}`, loop: id, name })),
      holes: `${holes} ${holes === 1 ? 'hole' : 'holes'}`,
    };
  });
}

/** What loops played as one are called: 'A + B'. */
export function namePlayed(routing: Routing, loops: readonly LoopId[]): string {
  const names = new Map(routing.loops.map(({ id, name }) => [id, name]));
  return loops.flatMap((loop) => names.get(loop) ?? []).join(' + ');
}

/** Other loops for a round. A name that only says which loops it plays goes with them. */
export function changeLoopsEdit(routing: Routing, round: Round, loops: readonly LoopId[]): NamedEdit {
  const of = { edit: 'change round', routing: routing.id, round: round.id } as const;
  const says = round.name === namePlayed(routing, round.loops) && loops.length > 0;
  return { ...of, to: says ? { loops, name: namePlayed(routing, loops).slice(0, LIMITS.name) } : { loops } };
}

/** A new round of these loops, after the one named, or after all. */
export function addRoundEdit(
  routing: Routing,
  loops: readonly LoopId[],
  id: string,
  after: RoundId | 'first' = routing.rounds.at(-1)?.id ?? 'first',
): NamedEdit {
  const name = namePlayed(routing, loops).slice(0, LIMITS.name) || 'Round';
  return { edit: 'add round', routing: routing.id, round: { id, name, loops }, after };
}

/**
 * The rounds that three loops are played as, two by two (A + B, B + C, C + A), as far as they are not there yet.
 *
 * @returns `undefined` where the routing has not three loops, or has all of those rounds
 */
export function twoByTwoEdit(routing: Routing, freshId: (letter: string) => string): NamedEdit | undefined {
  const loops = routing.loops.map(({ id }) => id);
  if (loops.length !== 3) return undefined;
  const known = new Set(routing.rounds.map((round) => round.loops.join(' ')));
  const missing = loops
    .map((loop, place) => [loop, loops[(place + 1) % 3] ?? loop])
    .filter((pair) => !known.has(pair.join(' ')));
  const ids = missing.map(() => freshId('r'));
  const edits = missing.map((pair, place) => addRoundEdit(routing, pair, ids[place] ?? '', ids[place - 1]));
  return edits.length > 0 ? { edit: 'several', does: 'rounds of two loops each', edits } : undefined;
}
