import { INKS, SANS } from '../inks.ts';
import { type Label, placeLabels } from '../label-placement.ts';
import { type Canvas, ink, type Pen, trace } from '../pen.ts';
import { toSheet } from '../site-transform.ts';
import type { SketchView, SketchWords } from './sketch-view.ts';

/** Pixels a word needs to stand on its leg, and a letter of it. */
const LEAST_ROOM = 58;
const WORDS_SIZE = 12.5;
const LETTER = 6.5;
/** Words stand above their place. */
const ABOVE = { x: 0, y: -11 };
/** Half the stroke across the end of a measured leg, as on a dimension line. */
const TICK = 4.5;
/** A sketch that will be wiped is drawn lighter. */
const LIGHT = 0.72;

export type SketchState = 'plain' | 'selected';

/** Paints a sketch in its maker's ink: solid where it is kept, lighter and with initials where it is not. */
export function paintSketch(canvas: Canvas, view: SketchView, scale: number, state: SketchState): void {
  const { colour, kept, ring, line } = view;
  canvas.globalAlpha *= kept || state === 'selected' ? 1 : LIGHT;
  const weight = (kept ? 2.4 : 1.7) + (state === 'selected' ? 1 : 0);
  const dash = view.kind === 'stroke' || kept ? {} : { dash: [9, 4] };
  canvas.lineJoin = 'round';
  canvas.lineCap = view.kind === 'stroke' ? 'round' : 'butt';
  if (ring) {
    const [x, y] = toSheet(ring.at);
    canvas.beginPath();
    canvas.arc(x, y, ring.radius, 0, 2 * Math.PI);
    ink(canvas, casing(weight), scale);
    ink(canvas, { colour, weight, ...dash }, scale);
    plus(canvas, x, y, scale);
    ink(canvas, { colour, weight: 1.4 }, scale);
  } else if (view.kind === 'stroke') {
    curve(canvas, line);
    ink(canvas, casing(weight + 0.5), scale);
    ink(canvas, { colour, weight: weight + 0.5 }, scale);
  } else {
    trace(canvas, line);
    if (view.kind === 'measured area') canvas.closePath();
    ink(canvas, casing(weight), scale);
    ink(canvas, { colour, weight, ...dash }, scale);
    ticks(canvas, line, scale);
    ink(canvas, { colour, weight: 1.4 }, scale);
  }
  for (const words of legibleWords(view.words, scale)) write(canvas, words.text, words.at, colour, scale, ABOVE);
  if (!kept) paintInitials(canvas, view, scale);
}

const casing = (weight: number): Pen => ({ colour: INKS.casing, weight: weight + 2.6 });

/** A freehand line through its points, rounded at each: by quadratic curves from middle to middle. */
function curve(canvas: Canvas, line: readonly number[]): void {
  canvas.beginPath();
  canvas.moveTo(line[0] ?? 0, line[1] ?? 0);
  for (let i = 2; i + 3 < line.length; i += 2) {
    const [x, y, nextX, nextY] = [line[i] ?? 0, line[i + 1] ?? 0, line[i + 2] ?? 0, line[i + 3] ?? 0];
    canvas.quadraticCurveTo(x, y, (x + nextX) / 2, (y + nextY) / 2);
  }
  canvas.lineTo(line.at(-2) ?? 0, line.at(-1) ?? 0);
}

function plus(canvas: Canvas, x: number, y: number, scale: number): void {
  const arm = TICK / scale;
  canvas.beginPath();
  canvas.moveTo(x - arm, y);
  canvas.lineTo(x + arm, y);
  canvas.moveTo(x, y - arm);
  canvas.lineTo(x, y + arm);
}

/** A slanted stroke at each point, as a draughtsman ends a dimension. */
function ticks(canvas: Canvas, line: readonly number[], scale: number): void {
  const arm = TICK / scale;
  canvas.beginPath();
  for (let i = 0; i + 1 < line.length; i += 2) {
    const [x, y] = [line[i] ?? 0, line[i + 1] ?? 0];
    canvas.moveTo(x - arm, y + arm);
    canvas.lineTo(x + arm, y - arm);
  }
}

/**
 * The words that can be read at this scale: those with too little room on the ground, and those that would lie on
 * others, are left out. The last, which says what all of it comes to, goes before the rest.
 */
function legibleWords(words: readonly SketchWords[], scale: number): readonly SketchWords[] {
  const shown = words.filter(({ room }) => room * scale >= LEAST_ROOM).reverse();
  const labels = shown.map(({ at, text }, index): Label => {
    const [x, y] = toSheet(at);
    const halfWidth = (text.length * LETTER) / 2;
    const places = [{ x: x * scale, y: y * scale }];
    return { id: String(index), places, halfWidth, halfHeight: WORDS_SIZE * 0.6, when: 'if there is room' };
  });
  const placed = placeLabels(labels);
  return shown.filter((_, index) => placed.has(String(index)));
}

function paintInitials(canvas: Canvas, { by, colour }: SketchView, scale: number): void {
  write(canvas, by.initials, by.at, colour, scale, { x: -13, y: 11 });
}

function write(
  canvas: Canvas,
  text: string,
  at: SketchWords['at'],
  colour: string,
  scale: number,
  beside: { readonly x: number; readonly y: number },
): void {
  canvas.save();
  canvas.globalAlpha = 1; // words are read, whatever becomes of the sketch
  canvas.translate(...toSheet(at));
  canvas.scale(1 / scale, 1 / scale);
  canvas.font = `600 ${WORDS_SIZE}px ${SANS}`;
  canvas.textAlign = 'center';
  canvas.textBaseline = 'middle';
  canvas.lineJoin = 'round';
  canvas.lineWidth = 3.5;
  canvas.setLineDash([]);
  canvas.strokeStyle = INKS.sheet;
  canvas.strokeText(text, beside.x, beside.y);
  canvas.fillStyle = colour;
  canvas.fillText(text, beside.x, beside.y);
  canvas.restore();
}
