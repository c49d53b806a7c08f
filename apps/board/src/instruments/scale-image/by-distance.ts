import type { NamedEdit } from '@loopwright/document';
import { distanceBetween, pointBetween } from '@loopwright/geometry';
import { type ImageLayer, parsePlacement, type SitePoint } from '@loopwright/model';
import { onTheGround, placedAfter, sizedAbout } from '../../images/placement.ts';
import { openSlot } from '../../live/slot.ts';
import { lengthWords } from '../../reading/lengths.ts';
import type { PointerAt } from '../../tools/tool.ts';
import type { Bench, InstrumentPicture, Running } from '../instrument.ts';
import { placingGesture } from '../placing-gesture.ts';
import { imageMeant, imageName } from './image-under.ts';
import { parseKnownDistance } from './known-distance.ts';

const BEGIN = 'Press on one end of a distance you know: a fence, a road, the side of a house.';
const NO_IMAGE = 'There is no picture here to scale: press on one, or drop one on the page.';
const SAME = 'Those are the same place: press on the other end, as far away as you can.';
/** Pixels of the screen between the two ends: closer, a hand's tremble is a tenth of it. */
const TOO_CLOSE = 20;
/** Metres a picture may be wide after scaling: from a green to a county. */
const [NARROWEST, WIDEST] = [5, 200_000];

/** Scales an image by two points on it and the distance between them; the first point stays where it lies. */
export function startByDistance(bench: Bench): Running {
  const prompt = openSlot(BEGIN);
  const picture = openSlot<InstrumentPicture>({});
  const entry = openSlot<string | undefined>(undefined);
  let image: ImageLayer | undefined;
  let ends: readonly SitePoint[] = [];

  const draw = (towards?: SitePoint) => {
    const line = towards && ends.length === 1 ? [...ends, towards] : ends;
    const [from, to] = line;
    picture.set({
      dots: ends.map((at) => ({ at, manner: 'grip' })),
      ...(from && to ? { lines: [{ points: line, manner: 'measure' }], words: [wordsAt(from, to, bench)] } : {}),
    });
  };
  const place = (next: readonly SitePoint[]) => {
    ends = next;
    if (ends.length === 0) image = undefined;
    prompt.set(promptFor(ends, image));
    entry.set(ends.length === 2 ? 'Its true length' : undefined);
    bench.show(undefined);
    draw();
  };
  const begin = (at: PointerAt) => {
    image = imageMeant(bench.written().site.images, bench.selection(), at.site);
    if (!image) return bench.say(NO_IMAGE);
    bench.select({ thing: { kind: 'image', id: image.id } });
    place([at.site]);
  };
  const end = (at: PointerAt, first: SitePoint) => {
    if (distanceBetween(at.site, first) * bench.scale() < TOO_CLOSE) return bench.say(SAME);
    place([first, at.site]);
  };
  const press = (at: PointerAt) => {
    const [first, second] = ends;
    if (!first) begin(at);
    else if (!second) end(at, first);
  };
  const scaled = (typed: string) => scaledBy(bench, { image, ends }, typed);

  return {
    prompt,
    picture,
    entry,
    hover: (at) => {
      if (ends.length === 1) draw(at.site);
    },
    press: (at) => {
      const before = ends;
      press(at);
      if (ends === before) return undefined;
      return placingGesture(at, {
        moveTo: (now) => place([...ends.slice(0, -1), now.site]),
        putBack: () => place(before),
      });
    },
    typing: (typed) => {
      const made = scaled(typed);
      bench.show(typeof made === 'string' ? undefined : made.edit);
    },
    enter: (typed) => {
      const made = scaled(typed);
      if (typeof made === 'string') return made;
      bench.show(made.edit);
      const result = bench.write();
      place([]);
      if (result === 'gone') return 'Somebody removed that picture meanwhile.';
      bench.say(made.words);
      bench.putAway();
      return undefined;
    },
    back: () => {
      if (ends.length === 0) return false;
      place(ends.slice(0, -1));
      return true;
    },
    letGo: () => {
      const had = ends.length > 0;
      place([]);
      return had;
    },
    stop: () => bench.show(undefined),
  };
}

/** What the distance is as the image lies now. */
function wordsAt(from: SitePoint, to: SitePoint, bench: Bench) {
  return {
    at: pointBetween(from, to, 0.5),
    text: `${lengthWords(distanceBetween(from, to), bench.reading().units)} now`,
  };
}

function promptFor(ends: readonly SitePoint[], image: ImageLayer | undefined): string {
  if (ends.length === 0) return BEGIN;
  if (ends.length === 1) return 'Press on its other end, as far away as you can.';
  return `Type how long that is on the ground: ${image ? imageName(image) : ''} takes its size from it.`;
}

interface Marked {
  readonly image: ImageLayer | undefined;
  readonly ends: readonly SitePoint[];
}

/** The step that makes the marked distance as long as was typed, with what to say of it; or why not. */
function scaledBy(
  bench: Bench,
  { image, ends: [first, second] }: Marked,
  typed: string,
): { readonly edit: NamedEdit; readonly words: string } | string {
  const { units } = bench.reading();
  const read = parseKnownDistance(typed, units);
  if (!image || !first || !second) return 'Press on both ends first.';
  if (read.kind === 'wrong') return read.why;
  const factor = read.metres / distanceBetween(first, second);
  const placement = placedAfter(image.placement, sizedAbout(first, factor));
  const { width } = onTheGround({ ...image, placement });
  const [name, wide] = [imageName(image), lengthWords(width, units)];
  // It may also come to lie off the site plane, or with pixels too small to be drawn.
  if (width < NARROWEST || width > WIDEST || !parsePlacement(placement)) return `That would make ${name} ${wide} wide.`;
  return {
    edit: { edit: 'change image', image: image.id, to: { placement, scaledBy: 'two points' } },
    words: `${name} is to scale: it is ${wide} wide. What was drawn before stays where it was.`,
  };
}
