import { angleBetween } from '@loopwright/geometry';
import { toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import { tierReached, tiersOf } from '../findings/tier.ts';
import { idsOf, type RoundHole } from '../rhythm/round-holes.ts';
import type { RoundDirections } from './round-directions.ts';

/**
 * Par 3s that run one way, and pairs of them that are alike: nearly one length and one direction besides.
 *
 * Two par 3s of one length are ordinary (24 of 31 mapped courses) and raise nothing by themselves.
 * Lengths are level: without heights, plays-like length and length are one.
 */
export function checkParThreesDirections(directions: RoundDirections): readonly Finding[] {
  const { holes, settings, round, name, isOneWay } = directions;
  const pairs = pairsOf(holes.filter(({ par }) => par === 3));
  const oneWay = pairs.filter(([a, b]) => isOneWay(a, b, 'par-threes-one-way-angle'));
  const tier = tierReached(tiersOf('par-threes-one-way', settings), oneWay.length);
  const alike = pairs.filter(
    ([a, b]) => lengthApart(a, b) < settings['par-threes-alike'] && isOneWay(a, b, 'par-threes-alike-angle'),
  );
  return [
    ...(tier
      ? [
          roundFinding({
            code: 'par-threes-one-way',
            holes: [...new Set(oneWay.flatMap(idsOf))],
            about: round.round,
            measured: oneWay.length,
            tier,
            unit: 'pairs',
            worse: 'more',
            detail: { round: name, angle: settings['par-threes-one-way-angle'] },
          }),
        ]
      : []),
    ...alike.map(([a, b]) =>
      roundFinding({
        code: 'par-threes-alike',
        holes: [a.id, b.id],
        about: [a.id, b.id].sort().join('|'),
        measured: lengthApart(a, b),
        tier: onlyTier('par-threes-alike', settings),
        unit: 'm',
        worse: 'less',
        place: { type: 'line', points: [a.greenCentre, b.greenCentre] },
        detail: { apartDegrees: Math.round((angleBetween(a.heading, b.heading) * 180) / Math.PI) },
      }),
    ),
  ];
}

function lengthApart(a: RoundHole, b: RoundHole): number {
  return toMillimetre(Math.abs(a.tee.measuredLength - b.tee.measuredLength));
}

function pairsOf(holes: readonly RoundHole[]): readonly (readonly [RoundHole, RoundHole])[] {
  return holes.flatMap((a, i) => holes.slice(i + 1).map((b) => [a, b] as const));
}
