import type { EditResult, NamedEdit } from '@loopwright/document';
import { distanceBetween, simplifiedTo } from '@loopwright/geometry';
import { pointToMillimetre, type SitePoint } from '@loopwright/model';
import { openSlot } from '../../live/slot.ts';
import type { PointerAt } from '../../tools/tool.ts';
import type { Bench, InstrumentPicture, Running, Snapped } from '../instrument.ts';
import { placingGesture } from '../placing-gesture.ts';
import { FEWEST, noMore, notYet, type OutlineShape, outlineWords } from './outline-words.ts';
import { typedCorner } from './typed-corner.ts';

/** What an outline is drawn for. Asked anew each time: what is chosen beside the instrument may change meanwhile. */
export interface OutlineWork {
  shape(): OutlineShape;
  /** What to do before the first corner, e.g. 'Press on the first corner of the boundary.' */
  begins(): string;
  /** The edit these points make. */
  editFor(points: readonly SitePoint[]): NamedEdit;
  /** Why these points are not taken although they are an outline, e.g. that they lie outside. */
  refusal?(points: readonly SitePoint[]): string | undefined;
  /** After writing; not when it was refused. */
  written(result: EditResult): void;
}

/** An outline in the hand, which whoever chooses beside it may begin anew or have drawn again. */
export interface OutlineRunning extends Running {
  /** Something that was chosen beside it changed. */
  refresh(): void;
  placed(): readonly SitePoint[];
}

/** Pixels within which a press is on the corner that is there already, and within which it closes an area. */
const SAME_PLACE = 4;
const CLOSES = { mouse: 12, pen: 14, touch: 24 } as const;
/** Others are shown so many corners of what is half drawn: more would not be sent. What is written has all. */
const MOST_SHOWN = 90;
const NEXT: Readonly<Record<OutlineShape, string>> = {
  area: 'Press on the next corner, or type the length of this side.',
  line: 'Press on the next point, or type the length of this leg.',
};
const ENOUGH: Readonly<Record<OutlineShape, string>> = {
  area: 'Press on the next corner; the first corner, Enter or a double press closes it.',
  line: 'Press on the next point; Enter or a double press ends the line.',
};

/** Draws an outline or a line corner by corner. It may cross itself on the way, but is not written like that. */
export function startOutline(bench: Bench, work: OutlineWork): OutlineRunning {
  const prompt = openSlot(work.begins());
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>(undefined);
  let placed: readonly SitePoint[] = [];
  /** Of those placed, what others are shown. */
  let told: readonly SitePoint[] = [];
  let pointer: Snapped | undefined;

  const refresh = () => {
    const shape = work.shape();
    const points = pointer && placed.length > 0 ? [...placed, pointer.at] : placed;
    const half = pointer && placed.length > 0 ? [...told, pointer.at] : told;
    bench.show(points.length >= FEWEST[shape] ? work.editFor(half.map(pointToMillimetre)) : undefined);
    picture.set(pictureOf(shape, { placed, points, pointer, bench }));
    prompt.set(placed.length === 0 ? work.begins() : (placed.length < FEWEST[shape] ? NEXT : ENOUGH)[shape]);
    entry.set(placed.length === 0 ? 'east, north of the first point' : 'length of this side');
  };
  const lay = (points: readonly SitePoint[]) => {
    placed = points;
    told = points.length > MOST_SHOWN ? simplifiedTo(points, MOST_SHOWN, 1 / bench.scale()) : points;
    pointer = undefined;
    refresh();
  };
  const finish = () => {
    const why = notYet(work.shape(), placed) ?? work.refusal?.(placed);
    if (why !== undefined) return bench.say(placed.length === 0 ? work.begins() : why);
    bench.show(work.editFor(placed.map(pointToMillimetre)));
    const result = bench.write();
    lay([]);
    work.written(result);
  };
  const isNear = (at: PointerAt, other: SitePoint | undefined, pixels: number) =>
    other !== undefined && distanceBetween(at.site, other) * bench.scale() < pixels;
  const snap = (at: PointerAt, before: readonly SitePoint[]) => {
    const [second, from] = [before.at(-2), before.at(-1)];
    return bench.snap(at.site, { for: 'vertex', ...(from ? { from } : {}), ...(second ? { before: second } : {}) });
  };
  const closes = (at: PointerAt) =>
    work.shape() === 'area' && placed.length >= FEWEST.area && isNear(at, placed[0], CLOSES[at.kind]);
  refresh();

  return {
    prompt,
    picture,
    entry,
    refresh,
    placed: () => placed,
    hover: (at) => {
      const first = closes(at) ? placed[0] : undefined;
      pointer = first ? { at: first, because: 'closes the outline' } : snap(at, placed);
      refresh();
    },
    press: (at) => {
      if (closes(at)) return void finish();
      if (isNear(at, placed.at(-1), SAME_PLACE)) return undefined;
      const full = noMore(work.shape(), placed);
      if (full !== undefined) return void bench.say(full);
      const before = placed;
      const place = (now: PointerAt) => lay([...before, snap(now, before).at]);
      place(at);
      return placingGesture(at, { moveTo: place, putBack: () => lay(before) });
    },
    enter: (typed) => {
      const full = noMore(work.shape(), placed);
      const next = typedCorner(typed, bench.reading().units, placed, pointer?.at);
      if (full !== undefined) return full;
      if (next.kind === 'wrong') return next.why;
      return void lay([...placed, next.at]);
    },
    finish,
    back: () => {
      const had = placed.length > 0;
      lay(placed.slice(0, -1));
      return had;
    },
    letGo: () => {
      const had = placed.length > 0;
      lay([]);
      return had;
    },
    stop: () => bench.show(undefined),
  };
}

interface Half {
  readonly placed: readonly SitePoint[];
  /** With the pointer after them. */
  readonly points: readonly SitePoint[];
  readonly pointer: Snapped | undefined;
  readonly bench: Bench;
}

function pictureOf(shape: OutlineShape, { placed, points, pointer, bench }: Half): InstrumentPicture {
  const words = pointer ? outlineWords(shape, points, bench.reading().units) : [];
  return {
    lines: [
      ...(points.length > 1
        ? [
            {
              points,
              manner: 'new' as const,
              ...(shape === 'area' && points.length > 2 ? { closed: true as const } : {}),
            },
          ]
        : []),
      ...(pointer?.guide ? [{ points: pointer.guide, manner: 'guide' as const }] : []),
    ],
    dots: [
      ...placed.map((at) => ({ at, manner: 'grip' as const })),
      ...(pointer && placed.length === 0 ? [{ at: pointer.at, manner: 'new' as const }] : []),
    ],
    atPointer: pointer ? [...words, ...(pointer.because ? [pointer.because] : [])] : [],
  };
}
