import type { Site } from '../site.ts';
import { parseFeature } from './feature.ts';
import { isFields } from './fields.ts';
import { LIMITS } from './limits.ts';
import { parseNamedList } from './named-list.ts';
import { parseNumber } from './number.ts';
import { lostParts, type ReadingNotes } from './reading-notes.ts';
import {
  parseBase,
  parseBoundary,
  parseGrid,
  parseImageLayer,
  parseLengthUnit,
  parseLocation,
  parseSiteMark,
} from './site-parts.ts';
import { parseSketch } from './sketch.ts';
import { parseLines, parseName } from './text.ts';

/** The land: what cannot be read of it is left out with a note. */
export function parseSite(value: unknown, notes: ReadingNotes): Site {
  if (!isFields(value)) {
    notes.add('The site could not be read: the board starts on bare land.');
    return { name: 'Unnamed site', north: 0, bases: [], marks: [], features: [], images: [] };
  }
  const location = parseLocation(value.location);
  const boundary = parseBoundary(value.boundary);
  const note = parseLines(value.note, LIMITS.note);
  const units = parseLengthUnit(value.units);
  const grid = parseGrid(value.grid);
  const plain = {
    name: parseName(value.name, LIMITS.name) ?? 'Unnamed site',
    north: parseNumber(value.north, -7, 7) ?? 0,
    ...(location && { location }),
    ...(boundary && { boundary }),
    ...(note && { note }),
    ...(units && { units }),
    ...(grid && { grid }),
  };
  const { bases, marks, features, images, sketches: drawn, ...rest } = value;
  for (const lost of lostParts(rest, plain)) notes.add(`Site: ${lost} could not be read as written.`);
  const sketches = parseNamedList(
    drawn,
    { one: 'Sketch', many: 'sketches', most: LIMITS.sketches },
    parseSketch,
    notes,
  );
  return {
    ...plain,
    bases: parseNamedList(bases, { one: 'Base', most: LIMITS.bases }, parseBase, notes),
    marks: parseNamedList(marks, { one: 'Site mark', most: LIMITS.siteMarks }, parseSiteMark, notes),
    features: parseNamedList(features, { one: 'Feature', most: LIMITS.features }, parseFeature, notes),
    images: parseNamedList(images, { one: 'Image', most: LIMITS.imageLayers }, parseImageLayer, notes),
    ...(sketches.length > 0 && { sketches }),
  };
}
