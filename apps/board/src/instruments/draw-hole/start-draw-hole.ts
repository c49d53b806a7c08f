import { plus, polylineLength, scaled } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import type { Bench, Running } from '../instrument.ts';
import { parseTyped, type Typed } from '../typed/typed-values.ts';
import { endsHere } from './aim.ts';
import type { DrawHoleOptions } from './draw-hole-options.ts';
import { isLastPoint, refusalOf } from './drawn-hole.ts';
import { type HoleInHand, LOCKED, openHoleInHand } from './hole-in-hand.ts';
import { placeChoices } from './seat-for.ts';

const NO_ROOM = 'The plan took no further hole: a routing holds two hundred, removed ones counted. Nothing is lost.';
const TAKEN = 'Its place in the round was removed meanwhile: press once more, and it takes the next.';

/** A hole in the making: point by point from either end, on the plan for all to see, written when it is whole. */
export function startDrawHole(bench: Bench, options: DrawHoleOptions): Running {
  const hand = openHoleInHand(bench, options);
  const laying = openLaying(bench, options, hand);
  const stops = [options.first, options.place, options.next].map((slot) =>
    slot.onChange(() => hand.draw(hand.drawn().points)),
  );
  options.places.set(placeChoices(bench.routing()));
  hand.tell();
  return {
    prompt: hand.prompt,
    picture: hand.picture,
    entry: hand.entry,
    hover: (at) => hand.point(at.site),
    press: (at) => {
      hand.point(at.site);
      const why = laying.lay(hand.aim(at.site).at, hand.next());
      if (why) bench.say(why);
      return undefined;
    },
    enter: (text) => laying.enter(parseTyped(text, bench.reading().units)),
    finish: laying.finish,
    lastPoint: laying.lastPoint,
    back: () => {
      const { points } = hand.drawn();
      if (hand.typed()) hand.type(undefined);
      else if (points.length === 0) return false;
      else hand.draw(points.slice(0, -1));
      return true;
    },
    letGo: () => {
      if (hand.drawn().points.length === 0) return false;
      hand.begin();
      return true;
    },
    stop: () => {
      for (const stop of stops) stop();
      bench.show(undefined);
    },
  };
}

/** Takes points in, pressed or typed, until the hole is whole. */
function openLaying(bench: Bench, options: DrawHoleOptions, hand: HoleInHand) {
  let last: SitePoint | undefined;
  /** Writes the hole with its last point there, and begins the next. */
  const write = (end: SitePoint) => {
    hand.show(end);
    const [hole, words, { number }] = [hand.drawn().hole, hand.figures(end), hand.seat()];
    const result = bench.write();
    if (result !== 'done') {
      hand.tell();
      return bench.say(result === 'gone' ? TAKEN : NO_ROOM);
    }
    bench.select({ hole });
    bench.say(`Drawn: ${number === undefined ? 'a spare hole' : `hole ${number}`}, ${words}.`);
    hand.begin();
    if (options.place.get().kind === 'after') options.place.set({ kind: 'after', hole });
    options.next.set('turn');
    return options.places.set(placeChoices(bench.routing()));
  };
  /** Takes a point in; answers why it cannot be, or nothing. */
  const lay = (at: SitePoint, as: 'turn' | 'end'): string | undefined => {
    const drawn = hand.drawn();
    if (bench.routing().locked) return LOCKED;
    const refused = refusalOf(drawn, at, hand.length);
    if (refused) return refused;
    last = at;
    const isEnd = as === 'end' || isLastPoint(drawn) || endsHere(drawn, at, bench.plan().site.marks, bench.routing());
    hand.type(undefined);
    if (isEnd && drawn.points.length > 0) write(at);
    else hand.draw([...drawn.points, at]);
    return undefined;
  };
  const enter = (read: Typed): string | undefined => {
    if (read.kind === 'wrong') return read.why;
    if (read.kind === 'place') return lay(read.at, hand.next());
    const { points, first } = hand.drawn();
    const from = points.at(-1);
    if (!from) return `Place the ${first} first: a length needs somewhere to start.`;
    const of = read.of === 'whole' ? 'whole' : options.typedOf.get();
    const left = of === 'leg' ? read.metres : read.metres - polylineLength(points);
    if (left <= 0) return `It is ${hand.length(polylineLength(points))} long already.`;
    if (read.bearing === undefined) {
      hand.type({ of, metres: read.metres });
      return undefined;
    }
    const towards = { x: Math.sin(read.bearing), y: Math.cos(read.bearing) };
    return lay(plus(from, scaled(towards, left)), of === 'whole' ? 'end' : hand.next());
  };
  /** The last point that was placed is the other end. */
  const finish = () => {
    const { points, first } = hand.drawn();
    const end = points.at(-1);
    if (!end) return;
    if (points.length === 1) {
      return bench.say(`It has a ${first} only: place its ${first === 'tee' ? 'green' : 'tee'} too.`);
    }
    hand.draw(points.slice(0, -1));
    return write(end);
  };
  return { lay, enter, finish, lastPoint: () => last };
}
