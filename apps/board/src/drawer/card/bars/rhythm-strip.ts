import type { Analysis, HoleFigures, RoundFigures } from '@loopwright/analysis';
import { type HoleId, type Plan, type Routing, settingsOf } from '@loopwright/model';
import type { Reading } from '../../../board/parts.ts';
import { lengthFigure } from '../../../reading/lengths.ts';
import type { Names } from '../../../reading/names.ts';
import { teeOf } from '../../../reading/tee-in-use.ts';

/** One hole of the strip, in playing order. */
export interface StripHole {
  readonly hole: HoleId;
  readonly number: string;
  readonly par: string;
  readonly length: string;
  /** Of the longest hole of the round, 0 to 1; 0 on an incomplete hole. */
  readonly share: number;
  readonly bend: 'left' | 'right' | 'straight' | 'unknown';
  /** '7 iron' said, '7i' shown. */
  readonly club: string;
  readonly clubShort: string;
  /** The first hole of a loop: a line stands before it. */
  readonly startsLoop: boolean;
}

const SHORT_CLUBS: Readonly<Record<string, string>> = {
  driver: '1w',
  'pitching wedge': 'pw',
  'gap wedge': 'gw',
  'sand wedge': 'sw',
  'part shot': 'ps',
};

/** A club in two or three letters: '7i', '3w', 'pw'. */
export function shortClub(club: string): string {
  const [number, kind] = club.split(' ');
  return SHORT_CLUBS[club] ?? `${number ?? ''}${kind?.slice(0, 1) ?? ''}`;
}

/** The round as it is played, hole by hole: par, length, bend and the club into the green. */
export function toStrip(
  { plan, routing, analysis }: { readonly plan: Plan; readonly routing: Routing; readonly analysis: Analysis },
  round: RoundFigures,
  reading: Reading,
  names: Names,
): readonly StripHole[] {
  const lengths = round.holes.map((hole) => teeOf(analysis.holes.get(hole), reading.teeSet)?.measuredLength ?? 0);
  const longest = Math.max(1, ...lengths);
  const least = (settingsOf(plan.settings)['bend-angle'] * Math.PI) / 180;
  const firsts = new Set(routing.loops.flatMap(({ holes }) => holes.slice(0, 1)));
  return round.holes.flatMap((hole, place) => {
    const figures = analysis.holes.get(hole);
    if (!figures) return [];
    const tee = figures.missing ? undefined : teeOf(figures, reading.teeSet);
    const club = tee?.approachClub ?? '';
    return [
      {
        hole,
        number: names.number(hole),
        par: tee ? String(figures.par.men) : '–',
        length: tee ? lengthFigure(tee.measuredLength, reading.units) : '–',
        share: tee ? (lengths[place] ?? 0) / longest : 0,
        bend: tee ? bendOf(figures, least) : 'unknown',
        club: tee ? club || 'from the tee' : '–',
        clubShort: tee ? shortClub(club) || '·' : '–',
        startsLoop: place > 0 && firsts.has(hole),
      } as const,
    ];
  });
}

/** The side of the sharpest bend that counts as one. */
function bendOf({ bends }: HoleFigures, least: number): 'left' | 'right' | 'straight' {
  const sharpest = bends.reduce((most, bend) => (most && most.angle >= bend.angle ? most : bend), bends[0]);
  return sharpest && sharpest.angle > least ? sharpest.side : 'straight';
}
