import { isFields, isList, parseText } from '@loopwright/model';
import { A_COURSE, type Wanted } from '../json-text.ts';
import { counted, type NoteBook } from '../note.ts';
import type { Element, Shape, Tags } from './element.ts';
import { MOST_VERTICES, type PositionCounts, readOutline, readPosition, readRun } from './positions.ts';

/** Mapped things of the largest file taken in. */
const MOST_ELEMENTS = 100_000;
/** Collections within collections beyond this depth are left out. */
const DEEPEST = 8;
const MOST_TAGS = 200;
const TAG_CHARACTERS = 200;

export type ReadElements =
  | { readonly kind: 'elements'; readonly elements: readonly Element[] }
  | { readonly kind: 'unreadable'; readonly why: string };

interface Reading {
  readonly elements: Element[];
  readonly counts: PositionCounts;
  empty: number;
  strange: number;
}

/**
 * The mapped things of a GeoJSON value: a FeatureCollection, one Feature, a bare geometry, or a bare list of any.
 *
 * Geometry collections and several points in one are taken apart, each part with the tags of the whole. What has no
 * usable geometry is counted in a note.
 *
 * Source: RFC 7946 (2016), sections 1.4, 2 and 3.
 */
export function readElements(value: unknown, notes: NoteBook, wanted: Wanted = A_COURSE): ReadElements {
  const listed = listOf(value);
  if (listed === undefined)
    return {
      kind: 'unreadable',
      why: `This JSON is neither a board file nor GeoJSON: drop ${wanted.file}.`,
    };
  const { members, isBare } = listed;
  if (members.length > MOST_ELEMENTS)
    return {
      kind: 'unreadable',
      why: `This file holds ${members.length} things, and ${MOST_ELEMENTS} are the most that can be read: cut it to ${wanted.cutTo}.`,
    };
  if (isBare) notes.add('The file is not a FeatureCollection; what it holds was read all the same.');
  const counts = { heights: 0, unreadable: 0, openRings: 0, vertices: 0 };
  const reading: Reading = { elements: [], counts, empty: 0, strange: 0 };
  for (const member of members) {
    readMember(member, reading);
    if (counts.vertices > MOST_VERTICES || reading.elements.length > MOST_ELEMENTS)
      return {
        kind: 'unreadable',
        why: `This file holds more than ${MOST_VERTICES} vertices or ${MOST_ELEMENTS} things: cut it to ${wanted.cutTo}.`,
      };
  }
  tell(reading, notes);
  return { kind: 'elements', elements: reading.elements };
}

function listOf(value: unknown): { members: readonly unknown[]; isBare: boolean } | undefined {
  if (Array.isArray(value)) return { members: value, isBare: true };
  if (!isFields(value)) return undefined;
  if (Array.isArray(value.features)) return { members: value.features, isBare: value.type !== 'FeatureCollection' };
  const isGeoJson = value.type === 'Feature' || 'coordinates' in value || 'geometries' in value || 'geometry' in value;
  return isGeoJson ? { members: [value], isBare: true } : undefined;
}

function readMember(member: unknown, reading: Reading): void {
  if (!isFields(member)) {
    reading.strange += 1;
    return;
  }
  const isFeature = 'geometry' in member || member.type === 'Feature';
  const geometry = isFeature ? member.geometry : member;
  const tags = readTags(isFeature ? member.properties : undefined);
  if (geometry === null || geometry === undefined) reading.empty += 1;
  else readGeometry(geometry, tags, reading, 0);
}

/** Tags as plain texts; those of some exports sit one level down, under 'tags'. */
function readTags(value: unknown): Tags {
  if (!isFields(value)) return {};
  const nested = isFields(value.tags) ? Object.entries(value.tags) : [];
  const tags = new Map<string, string>();
  for (const [name, tag] of [...nested, ...Object.entries(value)].slice(0, MOST_TAGS)) {
    if (typeof tag !== 'string' && typeof tag !== 'number') continue;
    const text = parseText(String(tag), TAG_CHARACTERS);
    if (text) tags.set(name, text);
  }
  return Object.fromEntries(tags);
}

function readGeometry(value: unknown, tags: Tags, reading: Reading, depth: number): void {
  if (isFields(value) && Array.isArray(value.geometries) && depth < DEEPEST) {
    for (const part of value.geometries) readGeometry(part, tags, reading, depth + 1);
    return;
  }
  if (isFields(value) && value.type === 'MultiPoint' && isList(value.coordinates, MOST_VERTICES)) {
    if (value.coordinates.length === 0) reading.empty += 1;
    for (const coordinates of value.coordinates) readGeometry({ type: 'Point', coordinates }, tags, reading, depth);
    return;
  }
  const shape = isFields(value) ? readShape(value.type, value.coordinates, reading.counts) : undefined;
  if (shape) reading.elements.push({ tags, shape });
  else reading.empty += 1;
}

function readShape(type: unknown, coordinates: unknown, counts: PositionCounts): Shape | undefined {
  const list: readonly unknown[] = Array.isArray(coordinates) ? coordinates : [];
  if (type === 'Point') {
    const at = readPosition(coordinates, counts);
    return at && { type: 'point', at };
  }
  if (type === 'LineString' || type === 'MultiLineString') {
    const pieces = (type === 'LineString' ? [list] : list)
      .map((piece) => readRun(piece, counts))
      .filter((piece) => piece.length >= 2);
    return pieces.length > 0 ? { type: 'line', pieces } : undefined;
  }
  if (type !== 'Polygon' && type !== 'MultiPolygon') return undefined;
  const parts = (type === 'Polygon' ? [list] : list).flatMap((part) => {
    const [outer, ...cut] = Array.isArray(part) ? part.map((ring: unknown) => readOutline(ring, counts)) : [];
    return outer ? [[outer, ...cut.flatMap((ring) => (ring ? [ring] : []))]] : [];
  });
  return parts.length > 0 ? { type: 'area', parts } : undefined;
}

function tell({ counts, empty, strange }: Reading, notes: NoteBook): void {
  if (empty > 0) notes.add(`Left out for want of a usable geometry: ${counted(empty, 'thing')}.`);
  if (strange > 0) notes.add(`Left out as no GeoJSON: ${counted(strange, 'entry', 'entries')}.`);
  if (counts.unreadable > 0)
    notes.add(`Left out for want of two finite numbers: ${counted(counts.unreadable, 'position')}.`);
  if (counts.heights > 0)
    notes.add(`Heights left out, since the board has no ground yet: at ${counted(counts.heights, 'position')}.`);
  if (counts.openRings > 0)
    notes.add(`Closed, since the file leaves it open: ${counted(counts.openRings, 'outline')}.`);
}
