import { distanceBetween } from '@loopwright/geometry';
import type { ImageLayer, SitePoint } from '@loopwright/model';
import { sitePointOf } from '../../drawing/images/corners.ts';
import { openSlot } from '../../live/slot.ts';
import type { PointerAt } from '../../tools/tool.ts';
import type { Bench, InstrumentPicture, Running } from '../instrument.ts';
import { imageMeant, imageName, type PixelPoint, pixelAt } from './image-under.ts';
import { type Laid, laidOver, layOverEdit, type Match } from './laid-over.ts';

const BEGIN = 'Press on a point of the picture that you can find on the drawing too.';
const NO_IMAGE = 'There is no picture here to lay over: press on one.';
/** Pixels of the screen: a second match in the same place says nothing new. */
const SAME_PLACE = 8;

/** Lays an image over what is there: a point of it, then where that belongs; two matches or more. */
export function startLayOver(bench: Bench): Running {
  const prompt = openSlot(BEGIN);
  const picture = openSlot<InstrumentPicture>({});
  let image: ImageLayer | undefined;
  let matches: readonly Match[] = [];
  let half: PixelPoint | undefined;

  const laid = () => image && laidOver(image, matches);
  /** The image as it is shown now. */
  const shown = () => image && { ...image, placement: laid()?.placement ?? image.placement };
  const refresh = () => {
    const [now, now2] = [laid(), shown()];
    if (image && now) bench.show(layOverEdit(image, now, bench.written().site.images));
    else bench.show(undefined);
    prompt.set(promptFor(image, half, now));
    const held = now2 && half ? [{ at: sitePointOf(now2, half.column, half.row), manner: 'grip' as const }] : [];
    picture.set(pictureOf(matches, now, held));
  };
  const begin = (at: PointerAt) => {
    image ??= imageMeant(bench.written().site.images, bench.selection(), at.site);
    const now = shown();
    half = now && pixelAt(now, at.site);
    if (!image || !half) return bench.say(NO_IMAGE);
    bench.select({ thing: { kind: 'image', id: image.id } });
  };
  const end = (at: PointerAt, pixel: PixelPoint) => {
    const to = at.site;
    const isNear = (one: SitePoint, other: SitePoint) => distanceBetween(one, other) * bench.scale() < SAME_PLACE;
    if (matches.some((match) => isNear(match.to, to)))
      return bench.say('There is a match in that place already: find another point, far from it.');
    const now = shown();
    const lies = now && sitePointOf(now, pixel.column, pixel.row);
    half = undefined;
    if (now && lies && matches.some((match) => isNear(sitePointOf(now, match.pixel.column, match.pixel.row), lies)))
      return bench.say('That point of the picture has its place already: find another, far from it.');
    matches = [...matches, { pixel, to }];
  };
  const clear = () => {
    [image, matches, half] = [undefined, [], undefined];
    refresh();
  };

  return {
    prompt,
    picture,
    hover: () => undefined,
    press: (at) => {
      if (half) end(at, half);
      else begin(at);
      refresh();
      return undefined;
    },
    finish: () => {
      if (matches.length === 0) return;
      half = undefined;
      refresh();
      const [name, result] = [image ? imageName(image) : '', bench.write()];
      clear();
      if (result === 'gone') return bench.say('Somebody removed that picture meanwhile.');
      if (result === 'nothing') return bench.say(`${name} lies there already, or would lie where it cannot be drawn.`);
      bench.say(`${name} was laid over the drawing.`);
      bench.putAway();
    },
    back: () => {
      if (!half && matches.length === 0) return false;
      if (half) half = undefined;
      else matches = matches.slice(0, -1);
      if (matches.length === 0 && !half) image = undefined;
      refresh();
      return true;
    },
    letGo: () => {
      const had = half !== undefined || matches.length > 0;
      clear();
      return had;
    },
    stop: () => bench.show(undefined),
  };
}

function promptFor(image: ImageLayer | undefined, half: PixelPoint | undefined, laid: Laid | undefined): string {
  if (!image) return BEGIN;
  if (half) return 'Now press where that point belongs.';
  const count = laid?.at.length ?? 0;
  if (count === 0) return BEGIN;
  if (count === 1) return 'It is shifted. A second point, far from the first, turns and scales it too; or Done.';
  if (count === 2) return 'It fits both points. A third shows how well; or Done.';
  return `${count} points, at most ${worst(laid)} m off. Another makes it surer; or Done.`;
}

const worst = (laid: Laid | undefined) => Math.max(0, ...(laid?.left ?? [])).toFixed(1);

/** Where each match belongs, and how far it is still off. */
function pictureOf(
  matches: readonly Match[],
  laid: Laid | undefined,
  held: NonNullable<InstrumentPicture['dots']>,
): InstrumentPicture {
  return {
    dots: [...matches.map(({ to }) => ({ at: to, manner: 'new' as const })), ...held],
    lines: matches.map(({ to }, index) => ({ points: [laid?.at[index] ?? to, to], manner: 'measure' })),
    words:
      matches.length < 3
        ? []
        : matches.map(({ to }, index) => ({ at: to, text: `${(laid?.left[index] ?? 0).toFixed(1)} m` })),
  };
}
