import { bearingOf, distanceBetween, minus } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import { openSlot } from '../../live/slot.ts';
import type { PointerAt } from '../../tools/tool.ts';
import type { Bench, InstrumentPicture, Running } from '../instrument.ts';
import { placingGesture } from '../placing-gesture.ts';
import { northFound } from './north-edit.ts';

const BEGIN = "Press at the foot of a line that points north: the plan's north arrow, a grid line, a road you know.";
const END = 'Press where it points to, as far away as you can.';
const SAME = 'Those are the same place: press further along the line.';
/** Pixels of the screen: closer, the direction is a hand's tremble. */
const TOO_CLOSE = 20;
const NORTH_UP = 'North is up: the pictures were turned to it. Bearings and the rose count from there.';
const DEGREES = /^(-?\d+(?:\.\d+)?)\s*°?$/;

/** Draws north as a line from its foot to its tip; or north is typed, in degrees clockwise from the top of the paper. */
export function startNorth(bench: Bench): Running {
  const prompt = openSlot(BEGIN);
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>('Degrees clockwise from the top');
  let foot: SitePoint | undefined;

  const point = (tip: SitePoint | undefined) => {
    const isLong = foot && tip && distanceBetween(foot, tip) * bench.scale() >= TOO_CLOSE;
    const north = isLong ? bearingOf(minus(tip, foot ?? tip)) : undefined;
    bench.show(north === undefined ? undefined : { edit: 'set north', north });
    picture.set({
      ...(foot ? { dots: [{ at: foot, manner: 'grip' }] } : {}),
      ...(foot && tip ? { lines: [{ points: [foot, tip], manner: 'new' }] } : {}),
      ...(north === undefined ? {} : { atPointer: [`north ${degreesOf(north)}° clockwise from the top`] }),
    });
    return north;
  };
  const stand = (at: SitePoint | undefined) => {
    foot = at;
    prompt.set(at ? END : BEGIN);
    point(undefined);
  };
  const write = (north: number) => {
    const found = northFound(bench.written(), north, foot);
    bench.show(found.edit);
    bench.write();
    stand(undefined);
    bench.say(found.turns === 'the pictures' ? NORTH_UP : arrowTurned(north));
    bench.putAway();
  };
  const tipAt = (at: PointerAt) => {
    const north = point(at.site);
    if (north === undefined) bench.say(SAME);
    else write(north);
  };

  return {
    prompt,
    picture,
    entry,
    hover: (at) => {
      if (foot) point(at.site);
    },
    press: (at) => {
      if (foot) {
        tipAt(at);
        return undefined;
      }
      stand(at.site);
      return placingGesture(at, {
        moveTo: (now) => void point(now.site),
        putBack: () => stand(undefined),
        letGo: () => undefined,
      });
    },
    enter: (typed) => {
      const degrees = Number(DEGREES.exec(typed.trim().slice(0, 20))?.[1] ?? Number.NaN);
      if (!(Math.abs(degrees) <= 360)) return 'Type degrees from 0 to 360, e.g. 12.5.';
      return void write((((degrees + 360) % 360) * Math.PI) / 180);
    },
    back: () => {
      if (!foot) return false;
      stand(undefined);
      return true;
    },
    letGo: () => {
      const had = foot !== undefined;
      stand(undefined);
      return had;
    },
    stop: () => bench.show(undefined),
  };
}

const arrowTurned = (north: number) =>
  `The arrow shows north ${degreesOf(north)}° clockwise from the top of the paper. ` +
  'Nothing that is drawn was turned: bearings and the rose still count from the top.';

const degreesOf = (radians: number) => (Math.round((radians * 1800) / Math.PI) / 10) % 360;
