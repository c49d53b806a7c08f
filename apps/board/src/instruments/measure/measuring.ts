import { LIMITS, type SitePoint, type SketchShape } from '@loopwright/model';
import { openSlot, type Watched } from '../../live/slot.ts';
import type { Bench, InstrumentPicture, Snapped } from '../instrument.ts';
import { addSketch, sayIfFull } from '../sketches/sketching.ts';
import { type MeasureKind, measureWords } from './measure-words.ts';

/** Vertices a shape needs to be one. */
const FEWEST: Readonly<Record<MeasureKind, number>> = { 'measured line': 2, 'measured area': 3 };

const PROMPTS: Readonly<Record<MeasureKind, readonly [first: string, next: string, enough: string]>> = {
  'measured line': [
    'Press where the measure begins.',
    'Press where this leg ends, or type its length.',
    'Press for the next leg; Enter or a double press ends the line.',
  ],
  'measured area': [
    'Press on the first corner of the area.',
    'Press on the next corner, or type the length of this side.',
    'Press for the next corner; Enter, or a press on the first one, closes the area.',
  ],
};

/** A measure that is being laid: what was placed, what follows the pointer, and what is shown of both. */
export interface Measuring {
  readonly prompt: Watched<string>;
  readonly picture: Watched<InstrumentPicture>;
  readonly entry: Watched<string | undefined>;
  placed(): readonly SitePoint[];
  pointer(): SitePoint | undefined;
  isEnough(): boolean;
  point(at: Snapped | undefined): void;
  /** Takes these for what was placed. */
  lay(points: readonly SitePoint[]): void;
  /** Writes it and begins anew; says what is missing where it is not enough. */
  finish(): void;
  clear(): void;
}

export function openMeasuring(kind: MeasureKind, bench: Bench): Measuring {
  const [first, next, enough] = PROMPTS[kind];
  const prompt = openSlot(first);
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>('east, north of the first point');
  let placed: readonly SitePoint[] = [];
  let pointer: Snapped | undefined;
  let id = bench.freshId('k');

  const show = (shape: SketchShape | undefined) => bench.show(shape && addSketch(bench, id, shape));
  const refresh = () => {
    const points = pointer && placed.length > 0 ? [...placed, pointer.at] : placed;
    show(shapeOf(kind, points));
    picture.set({
      dots: placed.map((at) => ({ at, manner: 'grip' })),
      ...(pointer?.guide ? { lines: [{ points: pointer.guide, manner: 'guide' }] } : {}),
      atPointer: [...measureWords(kind, points, bench.reading().units), ...(pointer?.because ? [pointer.because] : [])],
    });
    prompt.set(placed.length === 0 ? first : placed.length < FEWEST[kind] ? next : enough);
    entry.set(placed.length === 0 ? 'east, north of the first point' : 'length of this leg');
  };
  const clear = () => {
    placed = [];
    pointer = undefined;
    id = bench.freshId('k');
    refresh();
  };
  const isEnough = () => placed.length >= FEWEST[kind];
  return {
    prompt,
    picture,
    entry,
    placed: () => placed,
    pointer: () => pointer?.at,
    isEnough,
    point: (at) => {
      pointer = at;
      refresh();
    },
    lay: (points) => {
      if (points.length > LIMITS.linePoints) bench.say(`${LIMITS.linePoints} points are the most: Enter ends it.`);
      placed = points.slice(0, LIMITS.linePoints);
      pointer = undefined;
      refresh();
    },
    finish: () => {
      if (!isEnough()) return bench.say(placed.length === 0 ? first : next);
      show(shapeOf(kind, placed));
      sayIfFull(bench, bench.write());
      clear();
    },
    clear,
  };
}

function shapeOf(kind: MeasureKind, points: readonly SitePoint[]): SketchShape | undefined {
  if (kind === 'measured area' && points.length > 2) return { kind, ring: points };
  return points.length > 1 ? { kind: 'measured line', points } : undefined;
}
