import type { HoleId } from '@loopwright/model';
import { cardLength } from '@loopwright/model';
import { playedLength } from '../card/rose.ts';
import type { Analysis, HoleFigures, TotalLengths, WalkFigures } from '../figures.ts';
import type { FigureChange } from './ripple.ts';

type Of = FigureChange['of'];

/** Half of what a card shows: a smaller change is not one that anybody sees. */
const HALF_SHOWN = 0.5;

const TURN_DEGREES = 360;

/** Every figure of holes, walks, loops and rounds that a reader would see change. */
export function figureChanges(before: Analysis, after: Analysis): readonly FigureChange[] {
  return [...holeChanges(before, after), ...walkChanges(before, after), ...totalChanges(before, after)];
}

/** A change of metres that shows on a card, in metres or in yards. */
function shownLength(of: Of, figure: FigureChange['figure'], before: number, after: number): readonly FigureChange[] {
  const isShown =
    Math.abs(after - before) >= HALF_SHOWN &&
    (cardLength(before, 'metres') !== cardLength(after, 'metres') ||
      cardLength(before, 'yards') !== cardLength(after, 'yards'));
  return isShown ? [{ of, figure, before, after }] : [];
}

function shownCount(of: Of, figure: FigureChange['figure'], before: number, after: number): readonly FigureChange[] {
  return before === after ? [] : [{ of, figure, before, after }];
}

/** Shorter is better, as for a walk. */
function shorterIsBetter(changes: readonly FigureChange[]): readonly FigureChange[] {
  return changes.map((change) => ({ ...change, better: change.after < change.before }));
}

function holeChanges(before: Analysis, after: Analysis): readonly FigureChange[] {
  const numbersBefore = placesOf(before);
  const numbersAfter = placesOf(after);
  return [...after.holes.values()].flatMap((hole) => {
    const was = before.holes.get(hole.id);
    if (!was) return [];
    const of = { kind: 'hole', hole: hole.id } as const;
    const number = shownCount(of, 'number', numbersBefore.get(hole.id) ?? 0, numbersAfter.get(hole.id) ?? 0);
    return was === hole ? number : [...number, ...figuresOfHole(of, was, hole)];
  });
}

function figuresOfHole(of: Of, was: HoleFigures, is: HoleFigures): readonly FigureChange[] {
  return [
    ...shownLength(of, 'length', playedLength(was), playedLength(is)),
    ...shownCount(of, 'par', was.par.men, is.par.men),
    ...shownLength(of, 'approach', was.tees[0]?.approach ?? 0, is.tees[0]?.approach ?? 0),
    ...shownBearing(of, was.bearing, is.bearing),
  ];
}

function shownBearing(of: Of, before: number, after: number): readonly FigureChange[] {
  const degrees = (bearing: number) => Math.round((bearing * 180) / Math.PI) % TURN_DEGREES;
  const turned = Math.abs(after - before);
  const least = Math.min(turned, 2 * Math.PI - turned);
  const isShown = degrees(before) !== degrees(after) && least >= (HALF_SHOWN * Math.PI) / 180;
  return isShown ? [{ of, figure: 'bearing', before, after }] : [];
}

/** Places in the first round, then in the loops that no round plays; as the beads show them. */
function placesOf({ rounds, loops }: Analysis): ReadonlyMap<HoleId, number> {
  const places = new Map<HoleId, number>();
  for (const { holes } of [...rounds, ...loops]) {
    holes.forEach((hole, place) => {
      if (!places.has(hole)) places.set(hole, place + 1);
    });
  }
  return places;
}

/**
 * Walks are compared by the green they leave: where the order changed, the way from there leads elsewhere. The way from
 * a base is compared by the loop it begins, and where that loop begins elsewhere now, by the tee it leads to.
 */
function walkChanges(before: Analysis, after: Analysis): readonly FigureChange[] {
  const starts = new Map(before.walks.map((walk) => [startOf(walk), walk]));
  const ends = new Map(before.walks.map((walk) => [endOf(walk), walk]));
  const exact = new Map(before.walks.map((walk) => [walk.key, walk]));
  return after.walks.flatMap((walk) => {
    const was = exact.get(walk.key) ?? starts.get(startOf(walk)) ?? ends.get(endOf(walk));
    if (!was || was === walk) return [];
    const of = {
      kind: 'walk',
      key: walk.key,
      ...('hole' in walk.from && { from: walk.from.hole }),
      ...('hole' in walk.to && { to: walk.to.hole }),
    } as const;
    return shorterIsBetter([
      ...shownLength(of, 'walk', was.distance, walk.distance),
      ...shownLength(of, 'walk-back', was.walkBack, walk.walkBack),
    ]);
  });
}

function startOf({ from, to, loop }: WalkFigures): string {
  return 'hole' in from ? from.hole : `${from.base}>${loop}>${'hole' in to ? 'tee' : 'base'}`;
}

/** Of a walk from a base to a tee; others are known by where they begin. */
function endOf({ from, to, key }: WalkFigures): string {
  return 'base' in from && 'hole' in to ? `>${to.hole}` : key;
}

function totalChanges(before: Analysis, after: Analysis): readonly FigureChange[] {
  const loops = after.loops.flatMap((loop) => {
    const was = before.loops.find((other) => other.loop === loop.loop);
    return !was || was === loop ? [] : totals({ kind: 'loop', loop: loop.loop }, was, loop);
  });
  const rounds = after.rounds.flatMap((round) => {
    const was = before.rounds.find((other) => other.round === round.round);
    if (!was || was === round) return [];
    const of = { kind: 'round', round: round.round } as const;
    return [...totals(of, was, round), ...shownLength(of, 'on foot', was.onFoot, round.onFoot)];
  });
  return [...loops, ...rounds];
}

interface Totals {
  readonly lengths: readonly TotalLengths[];
  readonly par: { readonly men: number };
  readonly walk: number;
}

function totals(of: Of, was: Totals, is: Totals): readonly FigureChange[] {
  return [
    ...shownLength(of, 'length', was.lengths[0]?.measuredLength ?? 0, is.lengths[0]?.measuredLength ?? 0),
    ...shownCount(of, 'par', was.par.men, is.par.men),
    ...shorterIsBetter(shownLength(of, 'walk', was.walk, is.walk)),
  ];
}
