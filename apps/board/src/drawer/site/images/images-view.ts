import type { NamedEdit } from '@loopwright/document';
import type { ImageLayer, ImageLayerId, LengthUnit } from '@loopwright/model';
import { middleOf, onTheGround, placedAfter, turnedAbout } from '../../../images/placement.ts';
import { grouped, lengthFigure, lengthWords } from '../../../reading/lengths.ts';

/** One image as the sheet shows it. */
export interface ImageRow {
  readonly id: ImageLayerId;
  readonly name: string;
  /** '9,504 × 6,336 pixels'. */
  readonly pixels: string;
  /** '1,200 × 800 m'. */
  readonly ground: string;
  readonly scale: string;
  /** It lies at a guessed size. */
  readonly isGuess: boolean;
  readonly turnedDegrees: number;
  /** 0 to 100. */
  readonly opacity: number;
  /** What it lies over after going up or down one; absent where it goes no further. */
  readonly up?: ImageLayerId;
  readonly down?: ImageLayerId | 'first';
}

const SCALED: Readonly<Record<NonNullable<ImageLayer['scaledBy']>, string>> = {
  guess: 'at a guessed size: not to scale yet',
  'two points': 'scaled by points',
  'world file': 'placed by its world file',
};

/** The images of a site, the uppermost first, as they lie over each other. */
export function imageRows(images: readonly ImageLayer[], units: LengthUnit): readonly ImageRow[] {
  return images.map((image, index) => rowOf(image, index, images, units)).reverse();
}

function rowOf(image: ImageLayer, index: number, images: readonly ImageLayer[], units: LengthUnit): ImageRow {
  const { width, height, turnedDegrees } = onTheGround(image);
  const [above, below] = [images[index + 1], images[index - 2]];
  return {
    id: image.id,
    name: image.name ?? `Picture ${index + 1}`,
    pixels: `${grouped(image.widthPixels)} × ${grouped(image.heightPixels)} pixels`,
    ground: `${lengthFigure(width, units)} × ${lengthWords(height, units)}`,
    scale: image.scaledBy ? SCALED[image.scaledBy] : 'as it came with its board',
    isGuess: image.scaledBy === 'guess',
    turnedDegrees,
    opacity: Math.round(image.opacity * 100),
    ...(above ? { up: above.id } : {}),
    ...(index > 0 ? { down: below?.id ?? 'first' } : {}),
  };
}

/** Turns an image about its middle until its upper side lies so many degrees clockwise. */
export function turnEdit(image: ImageLayer, degrees: number): NamedEdit {
  const by = degrees - onTheGround(image).turnedDegrees;
  const placement = placedAfter(image.placement, turnedAbout(middleOf(image), by));
  return { edit: 'change image', image: image.id, to: { placement } };
}

/** Degrees as typed: '12.5', '-3°'; `undefined` for anything else. */
export function typedDegrees(typed: string): number | undefined {
  const found = /^([-−]?)(\d{1,3}(?:[.,]\d+)?)\s*°?$/.exec(typed.trim().slice(0, 20));
  const degrees = Number(found?.[2]?.replace(',', '.') ?? Number.NaN) * (found?.[1] ? -1 : 1);
  return Math.abs(degrees) <= 360 ? degrees : undefined;
}

/** The opacity edit of a slider, 0 to 100. */
export function opacityEdit(image: ImageLayerId, percent: number): NamedEdit {
  return { edit: 'change image', image, to: { opacity: Math.round(percent) / 100 } };
}
