import type { SitePoint } from '@loopwright/model';
import { openSlot, type Watched } from '../../live/slot.ts';
import { type Gesture, hasTravelled, type PointerAt } from '../../tools/tool.ts';
import type { Bench, InstrumentPicture, Running } from '../instrument.ts';
import { addSketch, sayIfFull } from '../sketches/sketching.ts';
import { eraseFrom } from './erasing.ts';
import { drawnOn, liveStroke, writtenStroke } from './stroke.ts';

export type PencilEnd = 'point' | 'eraser';

const PROMPTS = {
  point: 'Draw; everybody sees it. Or press from point to point, and Enter ends the line.',
  drawing: 'Let go where the line ends.',
  going: 'Press for the next point; Enter ends the line.',
  eraser: 'Press on a sketch to wipe it, or drag over several. Kept ones stay.',
} as const;

/** A pencil: a drag draws freehand; presses draw from point to point, so that no drag is needed. */
export function startPencil(bench: Bench, end: Watched<PencilEnd>): Running {
  const prompt = openSlot<string>(PROMPTS[end.get()]);
  const picture = openSlot<InstrumentPicture>({});
  let stroke: readonly SitePoint[] = [];
  let id = bench.freshId('k');

  const show = (pointer?: SitePoint) => {
    const points = pointer ? [...stroke, pointer] : stroke;
    const isLine = points.length > 1 && stroke.length > 0;
    bench.show(
      isLine ? addSketch(bench, id, { kind: 'stroke', points: liveStroke(points, bench.scale()) }) : undefined,
    );
    const [first] = stroke;
    picture.set(first ? { dots: [{ at: first, manner: 'grip' }] } : {});
    prompt.set(end.get() === 'eraser' ? PROMPTS.eraser : first ? PROMPTS.going : PROMPTS.point);
  };
  const clear = () => {
    stroke = [];
    id = bench.freshId('k');
    show();
  };
  const write = () => {
    if (stroke.length > 1) {
      const points = writtenStroke(stroke, bench.scale());
      // What is shown is thinner than what is written: others' messages are short.
      sayIfFull(bench, bench.edit(addSketch(bench, id, { kind: 'stroke', points })));
    }
    clear();
  };
  const draw = (start: PointerAt): Gesture => {
    const before = stroke;
    let isDrag = false;
    stroke = drawnOn(stroke, start.site, bench.scale());
    show();
    return {
      cursor: 'crosshair',
      move: (at) => {
        isDrag ||= hasTravelled(start, at);
        stroke = drawnOn(stroke, at.site, bench.scale());
        show();
        if (isDrag && before.length === 0) prompt.set(PROMPTS.drawing);
      },
      end: () => {
        // Pressed on the spot it is a point of a line that goes on; drawn in one, and from nothing, it is all.
        if (isDrag && before.length === 0) write();
      },
      cancel: () => {
        stroke = before;
        show();
      },
    };
  };
  const stopFollowing = end.onChange(clear);

  return {
    prompt,
    picture,
    hover: (at) => {
      if (end.get() === 'point' && stroke.length > 0) show(at.site);
    },
    press: (at) => (end.get() === 'eraser' ? eraseFrom(bench, at) : draw(at)),
    finish: write,
    back: () => {
      const had = stroke.length > 0;
      stroke = stroke.slice(0, -1);
      show();
      return had;
    },
    letGo: () => {
      const had = stroke.length > 0;
      clear();
      return had;
    },
    stop: () => {
      stopFollowing();
      bench.show(undefined);
    },
  };
}
