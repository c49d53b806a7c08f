import {
  type Feature,
  isFields,
  LIMITS,
  parseNumber,
  type Site,
  type SitePoint,
  type SurveyGrid,
} from '@loopwright/model';
import { type FeatureInHand, siteFeatures } from '../course/site-features.ts';
import { swapped } from '../geojson/axis-order.ts';
import { type Element, keepingPositions, type LonLat, withPositions } from '../geojson/element.ts';
import { readElements } from '../geojson/read-elements.ts';
import { readJsonText, type Wanted } from '../json-text.ts';
import { counted, type Note, type NoteBook, noteBook, pluralOf } from '../note.ts';
import { type CoordinateReading, epsgOf, knownCoordinates } from './coordinates.ts';
import { kindOfFeature, nameOfFeature, saidOf } from './feature-kind.ts';
import { fitFeatures } from './fit-features.ts';
import { placing } from './placing.ts';

/** What came of a file of features. */
export type FeaturesFile =
  | {
      readonly kind: 'features';
      readonly features: readonly Feature[];
      readonly notes: readonly Note[];
      /** The survey grid the file brings to a board without one: to be set in the same step. */
      readonly grid?: SurveyGrid;
    }
  /** Open until somebody says how the numbers are meant; then the file is read again with that. The likeliest first. */
  | { readonly kind: 'which-coordinates'; readonly why: string; readonly readings: readonly CoordinateReading['as'][] }
  /** One sentence: what is wrong and what to do. */
  | { readonly kind: 'unreadable'; readonly why: string };

export interface FeaturesOptions {
  /** Makes an id that begins with the letter and was never used on the board. */
  freshId(letter: string): string;
  /** What somebody said when asked. */
  readonly coordinates?: CoordinateReading;
}

const FEATURES: Wanted = {
  file: 'a GeoJSON file of what lies on the land',
  exported: 'what lies on the land',
  cutTo: 'the site and its surroundings',
};

/**
 * The features of a GeoJSON file, to be brought onto a site that is there already. Longitude and latitude are placed
 * where the board says it lies; other coordinates are asked about. Kinds come from the file's own words, from map tags,
 * or from names; what was guessed, thinned or left out is noted. Never throws.
 *
 * @param site  what is on it already counts against what a board holds; it is not changed
 * @returns the features on the site plane (m, to the millimetre) with notes; or how else the numbers could be meant, to be
 *   asked; or one sentence about why the file cannot be read
 *
 * Cost: O(size of the text).
 * Source: RFC 7946 (2016); for `crs`, the GeoJSON format specification of 2008, section 3.
 */
export function readFeatures(text: string, site: Site, options: FeaturesOptions): FeaturesFile {
  const json = readJsonText(text, FEATURES);
  if (json.kind === 'unreadable') return json;
  if (isFields(json.value) && Object.hasOwn(json.value, 'loopwright'))
    return { kind: 'unreadable', why: `This is a whole board: open it by itself, and drop ${FEATURES.file} here.` };
  const notes = noteBook();
  const read = readElements(json.value, notes, FEATURES);
  if (read.kind === 'unreadable') return read;
  const things = thingsOf(read.elements, notes);
  if (things.length === 0)
    return {
      kind: 'unreadable',
      why: 'Nothing in this file can be drawn on the land: it needs areas, lines or points.',
    };
  const how = readingOf(things, epsgOf(json.value), site, options.coordinates);
  if (how.kind === 'open') return { kind: 'which-coordinates', why: how.why, readings: how.readings };
  if (how.kind === 'nowhere') return { kind: 'unreadable', why: how.why };
  if (how.note) notes.add(how.note);
  const turned = how.turned ? things.map((thing) => onElement(thing, (one) => withPositions(one, swapped))) : things;
  if (how.turned) notes.add('Positions are written latitude first: turned round to longitude first. Check the place.');
  return placed(turned, how.reading, site, options, notes);
}

type How = ReturnType<typeof knownCoordinates>;

function readingOf(
  things: readonly FeatureInHand[],
  epsg: number | undefined,
  site: Site,
  said?: CoordinateReading,
): How {
  const elements = things.map(({ element }) => element);
  const how = knownCoordinates(elements, epsg, site);
  if (!said) return how;
  if (said.as === 'longitude and latitude')
    return { kind: 'known', reading: said, turned: how.kind === 'known' && how.turned };
  const where = said.as === 'site plane' ? 'from the origin of the site plane' : 'in the survey grid';
  return {
    kind: 'known',
    reading: said,
    turned: false,
    note: `Taken as ${said.unit} ${where}, as was said. Check the place.`,
  };
}

/** What in the file lies on the land, and as what; what does not is counted. */
function thingsOf(elements: readonly Element[], notes: NoteBook): readonly FeatureInHand[] {
  const left = new Map<string, number>();
  let guessed = 0;
  let unknown = 0;
  const things = elements.flatMap((element): readonly FeatureInHand[] => {
    const kind = kindOfFeature(element.tags);
    if (kind.is === 'left out') left.set(kind.what, (left.get(kind.what) ?? 0) + 1);
    if (kind.is === 'left out') return [];
    if (kind.by === 'words') guessed += 1;
    if (kind.by === 'nothing') unknown += 1;
    const name = nameOfFeature(element.tags);
    const more = saidOf(element.tags);
    return [{ element, kind: kind.kind, ...(name !== undefined && { name }), more }];
  });
  for (const [what, count] of left)
    notes.add(
      `Left out: ${counted(count, what, pluralOf(what))}.${what === 'hole' ? ' Holes come in with a whole course.' : ''}`,
    );
  if (guessed > 0) notes.add(`What they are was guessed from their names: ${counted(guessed, 'feature')}. Check each.`);
  if (unknown > 0)
    notes.add(
      `The file does not say what they are: ${counted(unknown, 'feature')} came in as 'other', which forbids nothing. Say what they are before trusting a finding.`,
    );
  return things;
}

function onElement(thing: FeatureInHand, change: (element: Element) => Element): FeatureInHand {
  return { ...thing, element: change(thing.element) };
}

function placed(
  things: readonly FeatureInHand[],
  reading: CoordinateReading,
  site: Site,
  { freshId }: FeaturesOptions,
  notes: NoteBook,
): FeaturesFile {
  const place = placing(
    things.map(({ element }) => element),
    reading,
    site,
  );
  if (place.kind === 'nowhere') return { kind: 'unreadable', why: place.why };
  const within = onThePlane(things, place.toSite, notes);
  const features = fitFeatures(
    siteFeatures(within, place.toSite, notes).map((feature) => ({ ...feature, id: freshId('f') })),
    site,
    notes,
  );
  if (features.length === 0)
    return { kind: 'unreadable', why: notes.all().at(-1)?.what ?? 'Nothing in this file can be drawn on the land.' };
  for (const note of place.notes) notes.add(note);
  return { kind: 'features', features, notes: notes.all(), ...(place.grid && { grid: place.grid }) };
}

/** Only what lies on the drawing; positions beyond it are counted. */
function onThePlane(
  things: readonly FeatureInHand[],
  toSite: (position: LonLat) => SitePoint,
  notes: NoteBook,
): readonly FeatureInHand[] {
  let lost = 0;
  const isOn = (position: LonLat) => {
    const { x, y } = toSite(position);
    return parseNumber(Math.max(Math.abs(x), Math.abs(y)), 0, LIMITS.coordinate) !== undefined;
  };
  const kept = things.flatMap((thing) => {
    const { elements, lost: off } = keepingPositions([thing.element], isOn);
    lost += off;
    return elements.map((element) => ({ ...thing, element }));
  });
  if (lost > 0)
    notes.add(`Left out, more than ${LIMITS.coordinate / 1000} km from the site: ${counted(lost, 'position')}.`);
  return kept;
}
