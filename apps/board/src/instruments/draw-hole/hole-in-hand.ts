import { distanceBetween } from '@loopwright/geometry';
import { LIMITS, pointToMillimetre, type SitePoint, settingsOf } from '@loopwright/model';
import { openSlot, type Watched } from '../../live/slot.ts';
import { lengthWords } from '../../reading/lengths.ts';
import { namesOf } from '../../reading/names.ts';
import type { Bench, InstrumentPicture, Snapped } from '../instrument.ts';
import { aimed, greenBefore, type TypedLength, wishesFor } from './aim.ts';
import type { DrawHoleOptions } from './draw-hole-options.ts';
import { type DrawnHole, figuresOf, partsOf, refusalOf } from './drawn-hole.ts';
import { pictureOf, promptFor } from './hole-words.ts';
import { type SeatForNew, seatFor } from './seat-for.ts';

export const LOCKED = 'This routing is locked: copy it to draw on it.';

/** What is drawn of a hole so far, as it is shown: on the plan for all to see, and in words for whoever draws. */
export interface HoleInHand {
  readonly prompt: Watched<string>;
  readonly picture: Watched<InstrumentPicture>;
  readonly entry: Watched<string | undefined>;
  drawn(): DrawnHole;
  /** Goes on with these points, and tells. */
  draw(points: readonly SitePoint[]): void;
  /** Begins another hole, and tells. */
  begin(): void;
  typed(): TypedLength | undefined;
  type(typed: TypedLength | undefined): void;
  /** Where the pointer is. */
  point(at: SitePoint): void;
  /** Where the next point would lie for a pointer there. */
  aim(at: SitePoint): Snapped;
  /** Puts the hole on the plan, with its last point there, for all to see. */
  show(end: SitePoint | undefined): void;
  /** Says and draws how things stand. */
  tell(): void;
  /** What the next press makes. */
  next(): 'turn' | 'end';
  seat(): SeatForNew;
  /** '378 yd, par 4' with its last point there. */
  figures(end: SitePoint): string | undefined;
  length(metres: number): string;
}

export function openHoleInHand(bench: Bench, options: DrawHoleOptions): HoleInHand {
  let drawn = freshHole(bench, options);
  let typed: TypedLength | undefined;
  let pointer: SitePoint | undefined;
  const prompt = openSlot('');
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>(undefined);

  const length = (metres: number) => lengthWords(metres, bench.reading().units);
  const seat = () => seatFor(bench.routing(), options.place.get(), drawn.hole);
  const next = () => (typed?.of === 'whole' ? 'end' : options.next.get());
  const aim = (at: SitePoint): Snapped => {
    const wishes = wishesFor(drawn, next(), walkedFrom(bench, seat()), settingsOf(bench.plan().settings));
    return aimed(drawn, bench.snap(at, wishes), typed, typed ? `${length(typed.metres)} as typed` : '');
  };
  const show = (end: SitePoint | undefined) => bench.show(editOf(bench, drawn, seat(), end));
  const figures = (end: SitePoint | undefined) => {
    const [set] = bench.plan().teeSets;
    const { line } = partsOf(drawn, end);
    if (!set || drawn.points.length === 0 || line.length < 2) return undefined;
    const { length: metres, par } = figuresOf(line, set);
    return `${length(metres)}, par ${par}`;
  };
  const tell = () => {
    const isLocked = bench.routing().locked;
    const isBegun = drawn.points.length > 0;
    prompt.set(isLocked ? LOCKED : promptFor(drawn, seat(), next()));
    entry.set(isLocked ? undefined : isBegun ? 'Length, or place' : 'Place: east, north');
    const snapped = pointer && aim(pointer);
    const refused = snapped && refusalOf(drawn, snapped.at, length);
    const end = refused ? undefined : snapped?.at;
    show(end);
    const walk =
      snapped && !isBegun && drawn.first === 'tee' ? walkWords(bench, seat(), snapped.at, length) : undefined;
    picture.set(pictureOf({ drawn, snapped, figures: figures(end), refused, walk, length }));
  };
  return {
    prompt,
    picture,
    entry,
    drawn: () => drawn,
    draw: (points) => {
      drawn = { ...drawn, points, first: points.length === 0 ? options.first.get() : drawn.first };
      tell();
    },
    begin: () => {
      drawn = freshHole(bench, options);
      [typed, pointer] = [undefined, undefined];
      tell();
    },
    typed: () => typed,
    type: (length) => {
      typed = length;
      tell();
    },
    point: (at) => {
      pointer = at;
      tell();
    },
    aim,
    show,
    tell,
    next,
    seat,
    figures,
    length,
  };
}

function freshHole(bench: Bench, options: DrawHoleOptions): DrawnHole {
  return {
    hole: bench.freshId('h'),
    first: options.first.get(),
    points: [],
    turns: Array.from({ length: LIMITS.turnPointsPerHole }, () => bench.freshId('t')),
  };
}

/** The edit that makes what is drawn, its tee that of the longest set; `undefined` while there is nothing. */
function editOf(bench: Bench, drawn: DrawnHole, { seat }: SeatForNew, end: SitePoint | undefined) {
  const [set] = bench.plan().teeSets;
  if (!set || drawn.points.length === 0) return undefined;
  const { tee, turnPoints, green } = partsOf(drawn, end);
  return {
    edit: 'draw hole',
    routing: bench.routing().id,
    hole: drawn.hole,
    seat,
    tees: tee ? { [set.id]: pointToMillimetre(tee) } : {},
    turnPoints: turnPoints.map(({ id, at }) => ({ id, at: pointToMillimetre(at) })),
    ...(green ? { green: { ...green, centre: pointToMillimetre(green.centre) } } : {}),
  } as const;
}

/** The green one comes from to the tee of the new hole. */
function walkedFrom(bench: Bench, { after }: SeatForNew) {
  const at = greenBefore(bench, after);
  if (!at || after === undefined) return undefined;
  return { at, words: `green ${namesOf(bench.plan(), bench.routing(), bench.reading().units).number(after)}` };
}

function walkWords(bench: Bench, seat: SeatForNew, tee: SitePoint, length: (metres: number) => string) {
  const green = walkedFrom(bench, seat);
  return green && `${length(distanceBetween(green.at, tee))} from ${green.words}`;
}
