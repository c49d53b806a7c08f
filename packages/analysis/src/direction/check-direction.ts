import { roundedCosine } from '@loopwright/geometry';
import type { SettingKey } from '@loopwright/model';
import type { Finding, RoundFigures } from '../figures.ts';
import { withoutRepeats } from '../findings/round-finding.ts';
import { roundHoles } from '../rhythm/round-holes.ts';
import type { RoundContext } from '../round-context.ts';
import { checkConsecutiveOneWay } from './consecutive-one-way.ts';
import { checkDirectionsUsed } from './directions-used.ts';
import { checkParThreesDirections } from './par-threes-directions.ts';
import type { RoundDirections } from './round-directions.ts';
import { checkSideBySide } from './side-by-side.ts';
import { checkThreeOneWay } from './three-one-way.ts';

/** Which way the holes of each round run. Never a `stop`. Cost: pairs of holes, dot products. */
export function checkDirection(context: RoundContext): readonly Finding[] {
  return withoutRepeats(context.rounds.flatMap((round) => checkRound(round, context)));
}

function checkRound(round: RoundFigures, context: RoundContext): readonly Finding[] {
  const { settings, routing } = context;
  const cosines = new Map<SettingKey, number>();
  const cosineOf = (angle: SettingKey) => {
    const known = cosines.get(angle) ?? roundedCosine(settings[angle]);
    cosines.set(angle, known);
    return known;
  };
  const directions: RoundDirections = {
    round,
    name: routing.rounds.find(({ id }) => id === round.round)?.name ?? '',
    holes: roundHoles(round, context),
    settings,
    isOneWay: (a, b, angle) => a.heading.x * b.heading.x + a.heading.y * b.heading.y >= cosineOf(angle),
  };
  return [
    ...checkDirectionsUsed(directions),
    ...checkThreeOneWay(directions),
    ...checkConsecutiveOneWay(directions),
    ...checkSideBySide(directions),
    ...checkParThreesDirections(directions),
  ];
}
