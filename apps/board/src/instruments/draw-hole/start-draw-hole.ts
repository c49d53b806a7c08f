import { distanceBetween, plus, polylineLength, scaled } from '@loopwright/geometry';
import { LIMITS, pointToMillimetre, type SitePoint, settingsOf } from '@loopwright/model';
import { openSlot } from '../../live/slot.ts';
import { lengthWords } from '../../reading/lengths.ts';
import { namesOf } from '../../reading/names.ts';
import type { Bench, InstrumentPicture, Running, Snapped } from '../instrument.ts';
import { parseTyped } from '../typed/typed-values.ts';
import { aimed, endsHere, greenBefore, type TypedLength, wishesFor } from './aim.ts';
import type { DrawHoleOptions } from './draw-hole-options.ts';
import { type DrawnHole, figuresOf, isLastPoint, partsOf, refusalOf } from './drawn-hole.ts';
import { pictureOf, promptFor } from './hole-words.ts';
import { placeChoices, seatFor } from './seat-for.ts';

const LOCKED = 'This routing is locked: copy it to draw on it.';

/** A hole in the making: point by point from either end, on the plan for all to see, written when it is whole. */
export function startDrawHole(bench: Bench, options: DrawHoleOptions): Running {
  const begin = (): DrawnHole => ({
    hole: bench.freshId('h'),
    first: options.first.get(),
    points: [],
    turns: Array.from({ length: LIMITS.turnPointsPerHole }, () => bench.freshId('t')),
  });
  let drawn = begin();
  let typed: TypedLength | undefined;
  let pointer: SitePoint | undefined;
  const prompt = openSlot('');
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>(undefined);

  const length = (metres: number) => lengthWords(metres, bench.reading().units);
  const seat = () => seatFor(bench.routing(), options.place.get(), drawn.hole);
  const nextWord = () => (typed?.of === 'whole' ? 'end' : options.next.get());
  const teeSet = () => bench.plan().teeSets[0];

  const snappedAt = (at: SitePoint): Snapped => {
    const { after } = seat();
    const place = greenBefore(bench, after);
    const names = namesOf(bench.plan(), bench.routing(), bench.reading().units);
    const green = after !== undefined && place ? { at: place, words: `green ${names.number(after)}` } : undefined;
    const wishes = wishesFor(drawn, nextWord(), green, settingsOf(bench.plan().settings));
    const words = typed ? `${length(typed.metres)} as typed` : '';
    return aimed(drawn, bench.snap(at, wishes), typed, words);
  };
  /** The edit that makes what is drawn, with its last point there. */
  const show = (end: SitePoint | undefined) => {
    const set = teeSet();
    if (!set || drawn.points.length === 0) return bench.show(undefined);
    const { tee, turnPoints, green } = partsOf(drawn, end);
    bench.show({
      edit: 'draw hole',
      routing: bench.routing().id,
      hole: drawn.hole,
      seat: seat().seat,
      tees: tee ? { [set.id]: pointToMillimetre(tee) } : {},
      turnPoints: turnPoints.map(({ id, at }) => ({ id, at: pointToMillimetre(at) })),
      ...(green ? { green: { ...green, centre: pointToMillimetre(green.centre) } } : {}),
    });
  };
  const figures = (end: SitePoint | undefined) => {
    const [set, parts] = [teeSet(), partsOf(drawn, end)];
    if (!set || parts.line.length < 2) return undefined;
    const { length: metres, par } = figuresOf(parts.line, set);
    return `${length(metres)}, par ${par}`;
  };
  const walkTo = (at: SitePoint): string | undefined => {
    const { after } = seat();
    const green = greenBefore(bench, after);
    if (!green || after === undefined || drawn.points.length > 0 || drawn.first === 'green') return undefined;
    const names = namesOf(bench.plan(), bench.routing(), bench.reading().units);
    return `${length(distanceBetween(green, at))} from green ${names.number(after)}`;
  };
  /** Says and draws how things stand, with the pointer where it was last. */
  const tell = () => {
    const isLocked = bench.routing().locked;
    prompt.set(isLocked ? LOCKED : promptFor(drawn, seat(), nextWord()));
    entry.set(isLocked ? undefined : drawn.points.length === 0 ? 'Place: east, north' : 'Length, or place');
    const snapped = pointer && snappedAt(pointer);
    const refused = snapped && refusalOf(drawn, snapped.at, length);
    const end = refused ? undefined : snapped?.at;
    show(end);
    picture.set(
      pictureOf({
        drawn,
        parts: partsOf(drawn, end),
        snapped,
        figures: drawn.points.length > 0 ? figures(end) : undefined,
        refused,
        walk: snapped && walkTo(snapped.at),
        length,
      }),
    );
  };
  const restart = () => {
    drawn = begin();
    typed = undefined;
    options.next.set('turn');
    options.places.set(placeChoices(bench.routing()));
    tell();
  };
  /** Writes the hole with its last point there. */
  const write = (end: SitePoint) => {
    show(end);
    const [hole, words, { number }] = [drawn.hole, figures(end), seat()];
    const result = bench.write();
    if (result !== 'done') {
      tell();
      bench.say(result === 'gone' ? 'Its place in the round was taken away: press once more.' : NO_ROOM);
      return;
    }
    bench.select({ hole });
    bench.say(`Drawn: ${number === undefined ? 'a spare hole' : `hole ${number}`}, ${words ?? ''}.`);
    if (options.place.get().kind === 'after') options.place.set({ kind: 'after', hole });
    pointer = undefined;
    restart();
  };
  /** Takes a point in; `undefined` when it is in, else why not. */
  const lay = (at: SitePoint, as: 'as it comes' | 'end'): string | undefined => {
    if (bench.routing().locked) return LOCKED;
    const refused = refusalOf(drawn, at, length);
    if (refused) return refused;
    const isEnd =
      drawn.points.length > 0 &&
      (as === 'end' || isLastPoint(drawn) || endsHere(drawn, at, bench.plan().site.marks, bench.routing()));
    typed = undefined;
    if (isEnd) write(at);
    else {
      drawn = { ...drawn, points: [...drawn.points, at] };
      options.next.set('turn');
      tell();
    }
    return undefined;
  };
  const stops = [options.first, options.place, options.next].map((slot) =>
    slot.onChange(() => {
      if (drawn.points.length === 0) drawn = { ...drawn, first: options.first.get() };
      tell();
    }),
  );
  options.places.set(placeChoices(bench.routing()));
  tell();

  return {
    prompt,
    picture,
    entry,
    hover: (at) => {
      pointer = at.site;
      tell();
    },
    press: (at) => {
      pointer = at.site;
      const why = lay(snappedAt(at.site).at, nextWord() === 'end' ? 'end' : 'as it comes');
      if (why) bench.say(why);
      return undefined;
    },
    enter: (text) => {
      const read = parseTyped(text, bench.reading().units);
      if (read.kind === 'wrong') return read.why;
      if (read.kind === 'place') return lay(read.at, nextWord() === 'end' ? 'end' : 'as it comes');
      const from = drawn.points.at(-1);
      if (!from) return `Place the ${drawn.first} first: a length needs somewhere to start.`;
      const of = read.of === 'whole' ? 'whole' : options.typedOf.get();
      const left = of === 'leg' ? read.metres : read.metres - polylineLength(drawn.points);
      if (left <= 0) return `It is ${length(polylineLength(drawn.points))} long already.`;
      if (read.bearing === undefined) {
        typed = { of, metres: read.metres };
        tell();
        return undefined;
      }
      const towards = { x: Math.sin(read.bearing), y: Math.cos(read.bearing) };
      return lay(plus(from, scaled(towards, left)), of === 'whole' ? 'end' : 'as it comes');
    },
    finish: () => {
      const end = drawn.points.at(-1);
      if (!end || drawn.points.length < 2) {
        if (end) bench.say(`It has a ${drawn.first} only: place its ${drawn.first === 'tee' ? 'green' : 'tee'} too.`);
        return;
      }
      drawn = { ...drawn, points: drawn.points.slice(0, -1) };
      write(end);
    },
    back: () => {
      const had = typed !== undefined || drawn.points.length > 0;
      if (typed) typed = undefined;
      else drawn = { ...drawn, points: drawn.points.slice(0, -1) };
      tell();
      return had;
    },
    letGo: () => {
      if (drawn.points.length === 0) return false;
      restart();
      return true;
    },
    stop: () => {
      for (const stop of stops) stop();
      bench.show(undefined);
    },
  };
}

const NO_ROOM = 'The plan took no further hole: a routing holds two hundred, removed ones counted. Nothing is lost.';
