import { isId } from '../ids.ts';
import { toMillimetre } from '../millimetre.ts';
import type { Base, Boundary, ImageLayer, SiteLocation, SiteMark, SurveyGrid } from '../site.ts';
import type { LengthUnit } from '../units.ts';
import { isFields, parseEach, parseSome, parseWord } from './fields.ts';
import { LIMITS } from './limits.ts';
import { parseNumber } from './number.ts';
import { parsePoint, parseRing } from './point.ts';
import { parseLines, parseName } from './text.ts';

/** Where on Earth the site plane lies. All of it or nothing: half a location puts the course elsewhere. */
export function parseLocation(value: unknown): SiteLocation | undefined {
  if (!isFields(value) || !isFields(value.origin)) return undefined;
  const latitude = parseNumber(value.latitude, -90, 90);
  const longitude = parseNumber(value.longitude, -180, 180);
  const epsg = parseNumber(value.epsg, 1024, 999_999);
  const easting = parseNumber(value.origin.easting, -1e8, 1e8);
  const northing = parseNumber(value.origin.northing, -1e8, 1e8);
  const scaleFactor = parseNumber(value.scaleFactor, 0.9, 1.1);
  if (latitude === undefined || longitude === undefined || epsg === undefined || !Number.isInteger(epsg))
    return undefined;
  if (easting === undefined || northing === undefined || scaleFactor === undefined) return undefined;
  return { latitude, longitude, epsg, origin: { easting, northing }, scaleFactor };
}

/** Where the site plane's origin lies in a survey grid. All of it or nothing. */
export function parseGrid(value: unknown): SurveyGrid | undefined {
  if (!isFields(value)) return undefined;
  const easting = parseNumber(value.easting, -1e8, 1e8);
  const northing = parseNumber(value.northing, -1e8, 1e8);
  return easting === undefined || northing === undefined ? undefined : { easting, northing };
}

/** The unit lengths are read in. */
export function parseLengthUnit(value: unknown): LengthUnit | undefined {
  return parseWord(value, ['yards', 'metres']);
}

/** The edge of the land: at least one outline. */
export function parseBoundary(value: unknown): Boundary | undefined {
  if (!isFields(value)) return undefined;
  const outlines = parseEach(value.outlines, LIMITS.boundaryOutlines, parseRing);
  const inner = value.inner === undefined ? [] : parseEach(value.inner, LIMITS.boundaryOutlines, parseRing);
  if (!outlines || outlines.length === 0 || !inner) return undefined;
  return { outlines, inner, tolerance: parseNumber(value.tolerance, 0, LIMITS.boundaryTolerance) ?? 0 };
}

/** A place holes leave from and return to. */
export function parseBase(value: unknown): Base | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  const apron = parsePoint(value.apron);
  if (apron === undefined) return undefined;
  const note = parseLines(value.note, LIMITS.note);
  return {
    id: value.id,
    name: parseName(value.name, LIMITS.name) ?? 'Base',
    apron,
    footprints: parseSome(value.footprints, LIMITS.footprints, parseRing),
    ...(note && { note }),
  };
}

export function parseMarkKind(value: unknown): SiteMark['kind'] | undefined {
  return parseWord(value, ['green site', 'tee site', 'landing ground']);
}

export function parseMarkVerdict(value: unknown): SiteMark['verdict'] | undefined {
  return parseWord(value, ['natural', 'needs work']);
}

/** Something found on the land before any hole. */
export function parseSiteMark(value: unknown): SiteMark | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  const kind = parseMarkKind(value.kind);
  const at = parsePoint(value.at);
  if (kind === undefined || at === undefined) return undefined;
  const note = parseLines(value.note, LIMITS.note);
  return {
    id: value.id,
    kind,
    at,
    verdict: parseMarkVerdict(value.verdict) ?? 'needs work',
    ...(note && { note }),
  };
}

const SHA_256 = /^[0-9a-f]{64}$/;

/** How an image's size on the ground is known. */
export function parseScaledBy(value: unknown): ImageLayer['scaledBy'] {
  return parseWord(value, ['guess', 'two points', 'world file']);
}

/** Where the pixels of an image lie: six finite numbers that leave it an area. */
export function parsePlacement(value: unknown): ImageLayer['placement'] | undefined {
  const terms = parseEach(value, 6, (term) => parseNumber(term, -LIMITS.coordinate, LIMITS.coordinate));
  if (terms === undefined) return undefined;
  const [a, b, c, d, e, f] = terms;
  if (a === undefined || b === undefined || c === undefined || d === undefined || e === undefined || f === undefined)
    return undefined;
  return toMillimetre((a * e - b * d) * 1000) === 0 ? undefined : [a, b, c, d, e, f];
}

/** An image under the drawing: its blob's hash and where its pixels lie. */
export function parseImageLayer(value: unknown): ImageLayer | undefined {
  if (!isFields(value) || !isId(value.id) || typeof value.blob !== 'string' || !SHA_256.test(value.blob))
    return undefined;
  const widthPixels = parseNumber(value.widthPixels, 1, LIMITS.imagePixels);
  const heightPixels = parseNumber(value.heightPixels, 1, LIMITS.imagePixels);
  const placement = parsePlacement(value.placement);
  if (widthPixels === undefined || heightPixels === undefined || placement === undefined) return undefined;
  const name = parseName(value.name, LIMITS.name);
  const scaledBy = parseScaledBy(value.scaledBy);
  return {
    id: value.id,
    blob: value.blob,
    widthPixels: Math.round(widthPixels),
    heightPixels: Math.round(heightPixels),
    placement,
    opacity: parseNumber(value.opacity, 0, 1) ?? 1,
    ...(name && { name }),
    ...(scaledBy && { scaledBy }),
  };
}
