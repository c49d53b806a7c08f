import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import { tierReached, tiersOf } from '../findings/tier.ts';
import { idsOf, type RoundHole } from '../rhythm/round-holes.ts';
import type { RoundDirections } from './round-directions.ts';

/**
 * Three holes in a row that run one way: each within 45°, and over the whole round the number of runs within 30°.
 *
 * A run that counts for the round is not told again by itself.
 * Source: 45° common practice, no source; the number of runs calibrated on 31 mapped courses.
 */
export function checkThreeOneWay(directions: RoundDirections): readonly Finding[] {
  const { holes, settings, round, name } = directions;
  const threes = holes.flatMap((first, i) => threeFrom(first, holes[i + 1], holes[i + 2]));
  const tight = threes.filter((three) => isOneWay(three, 'runs-one-way-angle', directions));
  const wide = threes.filter((three) => !tight.includes(three) && isOneWay(three, 'three-one-way-angle', directions));
  const tier = tierReached(tiersOf('runs-one-way', settings), tight.length);
  const runs = { code: 'runs-one-way', holes: [...new Set(tight.flatMap(idsOf))], about: round.round } as const;
  return [
    ...(tier
      ? [
          roundFinding({
            ...runs,
            measured: tight.length,
            tier,
            unit: 'holes',
            worse: 'more',
            detail: { round: name, angle: settings['runs-one-way-angle'] },
          }),
        ]
      : []),
    ...wide.map((three) =>
      roundFinding({
        code: 'three-one-way',
        holes: idsOf(three),
        measured: 3,
        tier: { ...onlyTier('three-one-way-angle', settings), limit: 3 },
        unit: 'holes',
        worse: 'more',
        detail: { angle: settings['three-one-way-angle'] },
      }),
    ),
  ];
}

type Three = readonly [RoundHole, RoundHole, RoundHole];

function threeFrom(a: RoundHole, b: RoundHole | undefined, c: RoundHole | undefined): readonly Three[] {
  return b && c && b.number === a.number + 1 && c.number === b.number + 1 ? [[a, b, c]] : [];
}

function isOneWay(
  [a, b, c]: Three,
  angle: 'runs-one-way-angle' | 'three-one-way-angle',
  { isOneWay: within }: RoundDirections,
): boolean {
  return within(a, b, angle) && within(b, c, angle) && within(a, c, angle);
}
