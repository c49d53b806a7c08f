import { bearingOf, minus } from '@loopwright/geometry';
import type { LengthUnit, SitePoint, TeeSet } from '@loopwright/model';
import { bearingWords } from '../../reading/directions.ts';
import { legSum, legsOf } from '../../reading/sketch-words.ts';
import { figuresOf } from '../draw-hole/drawn-hole.ts';

/** How a rod is held. */
export type Hold =
  | { readonly doing: 'pin' }
  /** Swung about a joint by the pointer; about the pin (0) all of it. */
  | { readonly doing: 'swing'; readonly joint: number }
  | { readonly doing: 'carry' }
  | { readonly doing: 'lie' };

/** What to do next, in one sentence. */
export function rodPrompt(hold: Hold, end: 'tee' | 'green'): string {
  switch (hold.doing) {
    case 'pin':
      return `Press where the rod is pinned: the ${end}.`;
    case 'swing':
      return hold.joint === 0
        ? 'Point the rod; press to lay it down. Enter leaves a hole.'
        : 'Point the leg; press to lay it down. Enter leaves a hole.';
    case 'carry':
      return 'Press where the pin goes.';
    case 'lie':
      return 'Press a joint to bend it, the pin to move it, elsewhere to swing it. Enter leaves a hole.';
  }
}

/**
 * What is read off a rod: its legs and sum, the par of that length, and the bearing it is played on.
 *
 * @param line  in the order of play
 */
export function rodFigures(
  line: readonly SitePoint[],
  teeSet: TeeSet | undefined,
  units: LengthUnit,
): readonly string[] {
  const [first, second] = line;
  if (!first || !second) return [];
  const par = teeSet ? `, par ${figuresOf(line, teeSet).par}` : '';
  return [`${legSum(legsOf(line), units)}${par}`, `played ${bearingWords(bearingOf(minus(second, first)))}`];
}
