import { distanceBetween, plus, polylineLength, scaled, unitVector } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import type { PointerAt } from '../../tools/tool.ts';
import type { Bench, Running, Snapped } from '../instrument.ts';
import { placingGesture } from '../placing-gesture.ts';
import { parseTyped } from '../typed/typed-values.ts';
import type { MeasureKind } from './measure-words.ts';
import { openMeasuring } from './measuring.ts';

/** Pixels within which a press is on the vertex that is there already. */
const SAME_PLACE = 4;
/** Pixels within which a press on the first vertex closes an area. */
const CLOSES = 14;

/** A measure in the hand: legs from vertex to vertex, shown to everybody while they are laid, written when it is all. */
export function startMeasure(kind: MeasureKind, bench: Bench): Running {
  const measuring = openMeasuring(kind, bench);
  const { placed, lay } = measuring;
  const snap = (at: PointerAt): Snapped => bench.snap(at.site, wishesAfter(placed()));
  const isNear = (at: PointerAt, other: SitePoint | undefined, pixels: number) =>
    other !== undefined && distanceBetween(at.site, other) * bench.scale() < pixels;

  return {
    prompt: measuring.prompt,
    picture: measuring.picture,
    entry: measuring.entry,
    hover: (at) => measuring.point(snap(at)),
    press: (at) => {
      const before = placed();
      if (isNear(at, before.at(-1), SAME_PLACE)) return undefined;
      if (kind === 'measured area' && measuring.isEnough() && isNear(at, before[0], CLOSES)) {
        measuring.finish();
        return undefined;
      }
      const place = (now: PointerAt) => {
        lay(before);
        lay([...before, snap(now).at]);
      };
      place(at);
      return placingGesture(at, { moveTo: place, putBack: () => lay(before) });
    },
    enter: (typed) => {
      const read = parseTyped(typed, bench.reading().units);
      const [before, from] = [placed().at(-2), placed().at(-1)];
      if (read.kind === 'wrong') return read.why;
      if (read.kind === 'place') return void lay([...placed(), read.at]);
      if (!from) return 'Place the first point: a length needs somewhere to start.';
      const left = read.of === 'whole' ? read.metres - polylineLength(placed()) : read.metres;
      if (left <= 0) return 'It is as long already.';
      const towards = read.bearing === undefined ? directionOf(from, measuring.pointer(), before) : wayOf(read.bearing);
      if (!towards) return 'Point where this leg goes, or type its bearing too: 120 @ 45.';
      return void lay([...placed(), plus(from, scaled(towards, left))]);
    },
    lastPoint: () => placed().at(-1),
    finish: measuring.finish,
    back: () => {
      if (placed().length === 0) return false;
      lay(placed().slice(0, -1));
      return true;
    },
    letGo: () => {
      const had = placed().length > 0;
      measuring.clear();
      return had;
    },
    stop: () => bench.show(undefined),
  };
}

const wayOf = (radians: number): SitePoint => ({ x: Math.sin(radians), y: Math.cos(radians) });

/** Where the next leg goes: towards the pointer, else straight on. */
function directionOf(from: SitePoint, pointer: SitePoint | undefined, before: SitePoint | undefined) {
  return (pointer && unitVector(from, pointer)) ?? (before && unitVector(before, from));
}

function wishesAfter(placed: readonly SitePoint[]) {
  const [before, from] = [placed.at(-2), placed.at(-1)];
  return { for: 'anything', ...(from ? { from } : {}), ...(before ? { before } : {}) } as const;
}
