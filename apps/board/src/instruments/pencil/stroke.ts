import { distanceBetween, simplifiedTo } from '@loopwright/geometry';
import { LIMITS, pointToMillimetre, type SitePoint } from '@loopwright/model';

/** Pixels between two points of a stroke as the hand draws it; nearer ones are trembling. */
const APART = 1.5;
/** Pixels by which a stroke may stray from the hand: less than the width of its line. */
const STRAY = { written: 0.4, live: 0.8 };
/** Points of a stroke in the hand before it is thinned: half a minute of quick drawing. */
const MOST_RAW = 3_000;
/** Bytes of a stroke while it is drawn: others' messages carry 4,096 with the pointer and the rest of it. */
const LIVE_BYTES = 3_300;

/** The stroke with a further point, where it is far enough from the last; the same list where it is not. */
export function drawnOn(stroke: readonly SitePoint[], at: SitePoint, scale: number): readonly SitePoint[] {
  const last = stroke.at(-1);
  if (last && distanceBetween(last, at) * scale < APART) return stroke;
  const longer = [...stroke, at];
  return longer.length > MOST_RAW ? simplifiedTo(longer, MOST_RAW / 2, STRAY.written / scale) : longer;
}

/** The stroke as it is written: as near to the hand as a pixel shows, in 500 points at most. */
export function writtenStroke(stroke: readonly SitePoint[], scale: number): readonly SitePoint[] {
  return simplifiedTo(stroke, LIMITS.sketchPoints, STRAY.written / scale).map(pointToMillimetre);
}

/** The stroke as the others see it while it is drawn: to a decimetre, and short enough for one message. */
export function liveStroke(stroke: readonly SitePoint[], scale: number): readonly SitePoint[] {
  let most = 140;
  let line = thinned(stroke, most, scale);
  while (JSON.stringify(line).length > LIVE_BYTES) {
    most = Math.floor(most * 0.85);
    line = thinned(stroke, most, scale);
  }
  return line;
}

function thinned(stroke: readonly SitePoint[], most: number, scale: number): readonly SitePoint[] {
  return simplifiedTo(stroke, most, STRAY.live / scale).map(({ x, y }) => ({ x: toDecimetre(x), y: toDecimetre(y) }));
}

const toDecimetre = (metres: number) => Math.round(metres * 10) / 10;
