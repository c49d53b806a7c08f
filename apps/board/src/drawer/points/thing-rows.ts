import type { NamedEdit } from '@loopwright/document';
import { boundsOf } from '@loopwright/geometry';
import type { ImageLayer, LengthUnit, Site, SitePoint } from '@loopwright/model';
import type { Consequences, SiteThing } from '../../board/parts.ts';
import { middleOf, placedAfter } from '../../images/placement.ts';
import { thingWords } from '../../reading/thing-words.ts';
import { thingMover } from '../../tools/land/move-thing.ts';
import { outlinesOf } from '../../tools/land/outlines-of.ts';
import { middleOf as middleOfFeature, sizeWords } from '../site/features/features-view.ts';
import { imageRows } from '../site/images/images-view.ts';
import { sketchRows } from '../site/sketches/sketches-view.ts';
import type { IndexRow } from './index-rows.ts';

/** Something on the site as the table lists it. */
export interface ThingRow extends IndexRow {
  readonly thing: SiteThing;
}

export function countThings({ boundary, bases, features, marks, images, sketches = [] }: Site): number {
  return [bases, features, marks, images, sketches].reduce((sum, { length }) => sum + length, boundary ? 1 : 0);
}

/** Everything on the site: boundary, bases, features, site marks, pictures, sketches. O(things and their vertices). */
export function thingRows(ground: Consequences, units: LengthUnit): readonly ThingRow[] {
  const { site } = ground.plan;
  const row = (
    thing: SiteThing,
    facts: readonly string[],
    at: SitePoint | undefined,
    edit = mover(site, thing, at),
  ) => ({
    key: 'id' in thing ? `${thing.kind} ${thing.id}` : thing.kind,
    thing,
    title: capital(thingWords(site, thing)),
    facts: [kindWord(thing), ...facts, ...verticesWords(site, thing)].filter((fact) => fact !== '').join('; '),
    ...(at ? { at } : {}),
    ...(edit ? { moved: edit } : {}),
  });
  const pictures = new Map(imageRows(site.images, units).map((image) => [image.id, image]));
  return [
    ...(site.boundary ? [row({ kind: 'boundary' }, [], middleOfAll(site.boundary.outlines))] : []),
    ...site.bases.map(({ id, apron, note = '' }) => row({ kind: 'base', id }, [note], apron)),
    ...site.features.map(({ id, kind, name, geometry, authority = '' }) =>
      row(
        { kind: 'feature', id },
        [name === undefined ? '' : kind, sizeWords(geometry, units), authority],
        middleOfFeature(geometry),
      ),
    ),
    ...site.marks.map(({ id, verdict, note = '', at }) => row({ kind: 'mark', id }, [verdict, note], at)),
    ...site.images.map((image) => {
      const shown = pictures.get(image.id);
      const facts = shown ? [shown.ground, shown.scale, `${shown.opacity} % shown`] : [];
      return row({ kind: 'image', id: image.id }, facts, middleOf(image), imageMover(image));
    }),
    ...sketchRows(site.sketches ?? [], ground, units).map(({ id, title, value, by, kept, note, at }) => ({
      ...row({ kind: 'sketch', id }, [value, `by ${by}`, kept ? 'kept' : 'until cleared', note], at),
      title,
    })),
  ];
}

type Moved = (to: SitePoint) => NamedEdit;

/** Moves all of a thing so that its place comes to lie there. */
function mover(site: Site, thing: SiteThing, at: SitePoint | undefined): Moved | undefined {
  const move = at && thingMover(site, thing);
  return move && ((to) => move({ x: to.x - at.x, y: to.y - at.y }));
}

function imageMover(image: ImageLayer): Moved {
  const at = middleOf(image);
  return (to) => ({
    edit: 'change image',
    image: image.id,
    to: { placement: placedAfter(image.placement, { p: 1, q: 0, e: to.x - at.x, n: to.y - at.y }) },
  });
}

const KIND_WORDS: Readonly<Record<SiteThing['kind'], string>> = {
  boundary: '',
  base: 'base',
  feature: '',
  mark: 'site mark',
  image: 'picture',
  sketch: 'sketch',
};
const kindWord = ({ kind }: SiteThing) => KIND_WORDS[kind];

function verticesWords(site: Site, thing: SiteThing): readonly string[] {
  const count = outlinesOf(site, thing).reduce((sum, { points }) => sum + points.length, 0);
  return count > 1 ? [`${count} vertices`] : [];
}

function middleOfAll(outlines: readonly (readonly SitePoint[])[]): SitePoint {
  const box = boundsOf(outlines.flat());
  return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
}

const capital = (words: string) => words.charAt(0).toLocaleUpperCase('en') + words.slice(1);
