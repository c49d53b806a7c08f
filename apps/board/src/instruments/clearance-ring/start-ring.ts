import { LIMITS, type RingCentre, type SketchShape, toMillimetre } from '@loopwright/model';
import { ringCentre } from '../../drawing/sketches/ring-centre.ts';
import { openSlot, type Slot } from '../../live/slot.ts';
import { lengthWords, unitSymbol } from '../../reading/lengths.ts';
import { namesOf, partWords } from '../../reading/names.ts';
import { REACH } from '../../tools/hit.ts';
import type { PointerAt } from '../../tools/tool.ts';
import type { Bench, InstrumentPicture, Running } from '../instrument.ts';
import { placingGesture } from '../placing-gesture.ts';
import { addSketch, sayIfFull } from '../sketches/sketching.ts';
import { parseTyped } from '../typed/typed-values.ts';
import { partNear } from './part-near.ts';

/** Metres about a green in many published guidelines for playing surfaces; a person types another. */
export const FIRST_RADIUS = 30;

/** Places clearance rings: about a part of a hole, which they follow, or about a place. One press each. */
export function startRing(bench: Bench, radius: Slot<number>): Running {
  const prompt = openSlot('');
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>(`Radius, ${unitSymbol(bench.reading().units)}`);
  let pointer: PointerAt | undefined;

  const length = (metres: number) => lengthWords(metres, bench.reading().units);
  const refresh = () => {
    prompt.set(`Press on a green, a tee, a turn or any place: a ring ${length(radius.get())} about it.`);
    const shown = pointer && aboutAt(bench, pointer);
    const centre = shown && ringCentre(shown.about, bench.routing(), bench.analysis());
    picture.set(
      centre && shown
        ? {
            rings: [{ centre, radius: radius.get(), manner: 'measure' }],
            dots: [{ at: centre, manner: 'new' }],
            atPointer: [length(radius.get()), shown.words],
          }
        : {},
    );
  };
  const put = (about: RingCentre, id: string) => {
    const shape: SketchShape = { kind: 'ring', radius: radius.get(), about };
    bench.show(addSketch(bench, id, shape));
  };
  const stopFollowing = radius.onChange(refresh);
  refresh();

  return {
    prompt,
    picture,
    entry,
    hover: (at) => {
      pointer = at;
      refresh();
    },
    press: (at) => {
      const id = bench.freshId('k');
      pointer = undefined;
      put(aboutAt(bench, at).about, id);
      refresh();
      return placingGesture(at, {
        moveTo: (now) => put(aboutAt(bench, now).about, id),
        putBack: () => bench.show(undefined),
        letGo: () => sayIfFull(bench, bench.write()),
      });
    },
    enter: (typed) => {
      const read = parseTyped(typed, bench.reading().units);
      const metres = read.kind === 'length' ? toMillimetre(read.metres) : Number.NaN;
      if (!(metres >= LIMITS.leastRingRadius && metres <= LIMITS.ringRadius)) {
        return `Type a radius, up to ${length(LIMITS.ringRadius)}, e.g. 30.`;
      }
      radius.set(metres);
      return undefined;
    },
    letGo: () => false,
    stop: () => {
      stopFollowing();
      bench.show(undefined);
    },
  };
}

/** What a ring put there would stand about: the part of a hole within reach of the hand, else the place. */
function aboutAt(bench: Bench, at: PointerAt): { readonly about: RingCentre; readonly words: string } {
  const routing = bench.routing();
  const part = partNear(routing, bench.analysis(), at.site, REACH[at.kind] / bench.scale());
  if (!part) {
    const snapped = bench.snap(at.site, { for: 'anything' });
    return { about: { at: snapped.at }, words: snapped.because ?? 'about this place' };
  }
  const names = namesOf(bench.plan(), routing, bench.reading().units);
  return {
    about: { routing: routing.id, hole: part.hole, part: part.part },
    words: `about ${partWords(bench.plan().teeSets, names.number(part.hole), part.part)}, follows it`,
  };
}
