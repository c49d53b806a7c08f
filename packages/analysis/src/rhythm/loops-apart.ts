import type { Finding, LoopFigures } from '../figures.ts';
import { roundFinding } from '../findings/round-finding.ts';
import { tierOver, tiersOf } from '../findings/tier.ts';
import type { RoundContext } from '../round-context.ts';
import type { RoundRhythm } from './round-rhythm.ts';

/**
 * Loops of a round that differ in par or in length, from the longest tees. Only loops of as many holes are compared.
 *
 * Source: nines within one stroke on 92 % of 144 cards, within two on 97 %; lengths common practice, no source.
 */
export function checkLoopsApart({ round, name, settings }: RoundRhythm, context: RoundContext): readonly Finding[] {
  const loops = loopsPlayed(round.round, context);
  const holes = loops[0]?.holes.length;
  if (loops.length < 2 || loops.some((loop) => loop.holes.length !== holes)) return [];
  const par = spreadOf(loops.map((loop) => loop.par.men));
  const length = spreadOf(loops.map((loop) => loop.lengths[0]?.measuredLength ?? 0));
  const about = { holes: [], about: round.round, worse: 'more', detail: { round: name } } as const;
  const parTier = tierOver(tiersOf('loop-par-apart', settings), par);
  const lengthTier = tierOver(tiersOf('loop-length-apart', settings), length);
  return [
    ...(parTier
      ? [roundFinding({ code: 'loop-par-apart', ...about, measured: par, tier: parTier, unit: 'strokes' })]
      : []),
    ...(lengthTier
      ? [roundFinding({ code: 'loop-length-apart', ...about, measured: length, tier: lengthTier, unit: 'm' })]
      : []),
  ];
}

/** The loops of a round, in the order they are played. */
export function loopsPlayed(round: string, { routing, loops }: RoundContext): readonly LoopFigures[] {
  const ids = routing.rounds.find(({ id }) => id === round)?.loops ?? [];
  return ids.flatMap((id) => loops.find(({ loop }) => loop === id) ?? []);
}

function spreadOf(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
