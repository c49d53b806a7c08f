import {
  type Fields,
  isFields,
  isId,
  LIMITS,
  parseBase,
  parseBoundary,
  parseEach,
  parseFeature,
  parseGrid,
  parseImageLayer,
  parseLengthUnit,
  parseLines,
  parseNumber,
  parsePoint,
  parseSiteMark,
  parseSketch,
  parseTeeSet,
  parseText,
} from '@loopwright/model';
import {
  parseBaseFields,
  parseFeatureFields,
  parseImageFields,
  parseMarkFields,
  parseSketchFields,
  parseTeeSetFields,
} from './parse-fields-of.ts';
import type { OutlineOf, SiteEdit } from './site-edit.ts';

/** Untrusted fields as an edit of the land, or of what is drawn beside the plan; `undefined` when they are none. */
export function parseSiteEdit(value: Fields): SiteEdit | undefined {
  return (
    parseOfFrame(value) ?? parseOfOutline(value) ?? parseAdding(value) ?? parseChanging(value) ?? parseOfPlace(value)
  );
}

/** What is decided about the site as a whole. */
function parseOfFrame(value: Fields): SiteEdit | undefined {
  switch (value.edit) {
    case 'name site': {
      const name = parseText(value.name, LIMITS.name);
      return name === undefined ? undefined : { edit: 'name site', name };
    }
    case 'note site': {
      const note = parseLines(value.note, LIMITS.note);
      return note === undefined ? undefined : { edit: 'note site', note };
    }
    case 'set units': {
      const units = parseLengthUnit(value.units);
      return units && { edit: 'set units', units };
    }
    case 'set north': {
      const north = parseNumber(value.north, -7, 7);
      return north === undefined ? undefined : { edit: 'set north', north };
    }
    case 'set grid': {
      const grid = parseGrid(value.grid);
      return grid && { edit: 'set grid', grid };
    }
    case 'draw boundary': {
      const boundary = value.boundary === null ? null : parseBoundary(value.boundary);
      return boundary === undefined ? undefined : { edit: 'draw boundary', boundary };
    }
    default:
      return undefined;
  }
}

function parseOutlineOf(value: unknown): OutlineOf | undefined {
  if (!isFields(value)) return undefined;
  if (value.of === 'sketch') return isId(value.sketch) ? { of: 'sketch', sketch: value.sketch } : undefined;
  const ring = parseNumber(value.ring, 0, LIMITS.ringsPerArea);
  if (ring === undefined || !Number.isInteger(ring)) return undefined;
  const { of, part, base, feature } = value;
  if (of === 'boundary') return part === 'outlines' || part === 'inner' ? { of, part, ring } : undefined;
  if (of === 'base') return isId(base) ? { of, base, ring } : undefined;
  return of === 'feature' && isId(feature) ? { of, feature, ring } : undefined;
}

/** What is done to one outline or line. */
function parseOfOutline(value: Fields): SiteEdit | undefined {
  const outline = parseOutlineOf(value.outline);
  const [from, to, after, at, by] = ['from', 'to', 'after', 'at', 'by'].map((name) => parsePoint(value[name]));
  if (!outline) return undefined;
  switch (value.edit) {
    case 'move vertex':
      return from && to && { edit: 'move vertex', outline, from, to };
    case 'add vertex':
      return after && at && { edit: 'add vertex', outline, after, at };
    case 'remove vertex':
      return at && { edit: 'remove vertex', outline, at };
    case 'move outline':
      return by && { edit: 'move outline', outline, by };
    default:
      return undefined;
  }
}

/** What is new on the land or beside the plan. */
function parseAdding(value: Fields): SiteEdit | undefined {
  switch (value.edit) {
    case 'add base': {
      const base = parseBase(value.base);
      return base && { edit: 'add base', base };
    }
    case 'add features': {
      const features = parseEach(value.features, LIMITS.features, parseFeature);
      return features && { edit: 'add features', features };
    }
    case 'add mark': {
      const mark = parseSiteMark(value.mark);
      return mark && { edit: 'add mark', mark };
    }
    case 'add image': {
      const image = parseImageLayer(value.image);
      return image && { edit: 'add image', image };
    }
    case 'add tee set': {
      const teeSet = parseTeeSet(value.teeSet);
      return teeSet && isId(value.after) ? { edit: 'add tee set', teeSet, after: value.after } : undefined;
    }
    case 'add sketch': {
      const sketch = parseSketch(value.sketch);
      return sketch && { edit: 'add sketch', sketch };
    }
    default:
      return undefined;
  }
}

/** What is decided anew about a thing. */
function parseChanging(value: Fields): SiteEdit | undefined {
  const { base, feature, mark, image, teeSet, sketch } = value;
  switch (value.edit) {
    case 'change base': {
      const to = parseBaseFields(value.to);
      return to && isId(base) ? { edit: 'change base', base, to } : undefined;
    }
    case 'change feature': {
      const to = parseFeatureFields(value.to);
      return to && isId(feature) ? { edit: 'change feature', feature, to } : undefined;
    }
    case 'change mark': {
      const to = parseMarkFields(value.to);
      return to && isId(mark) ? { edit: 'change mark', mark, to } : undefined;
    }
    case 'change image': {
      const to = parseImageFields(value.to);
      return to && isId(image) ? { edit: 'change image', image, to } : undefined;
    }
    case 'change tee set': {
      const to = parseTeeSetFields(value.to);
      return to && isId(teeSet) ? { edit: 'change tee set', teeSet, to } : undefined;
    }
    case 'change sketch': {
      const to = parseSketchFields(value.to);
      return to && isId(sketch) ? { edit: 'change sketch', sketch, to } : undefined;
    }
    default:
      return undefined;
  }
}

/** What is put in another order, or taken away. Other pixels are no drag, and not taken from others this way. */
function parseOfPlace(value: Fields): SiteEdit | undefined {
  const { base, mark, image, teeSet, after } = value;
  switch (value.edit) {
    case 'order image':
      return isId(image) && isId(after) ? { edit: 'order image', image, after } : undefined;
    case 'order tee set':
      return isId(teeSet) && isId(after) ? { edit: 'order tee set', teeSet, after } : undefined;
    case 'remove base':
      return isId(base) ? { edit: 'remove base', base } : undefined;
    case 'remove mark':
      return isId(mark) ? { edit: 'remove mark', mark } : undefined;
    case 'remove image':
      return isId(image) ? { edit: 'remove image', image } : undefined;
    case 'remove tee set':
      return isId(teeSet) ? { edit: 'remove tee set', teeSet } : undefined;
    case 'remove features': {
      const features = parseEach(value.features, LIMITS.features, (id) => (isId(id) ? id : undefined));
      return features && { edit: 'remove features', features };
    }
    case 'wipe sketches': {
      const sketches = parseEach(value.sketches, LIMITS.sketches, (id) => (isId(id) ? id : undefined));
      return sketches && { edit: 'wipe sketches', sketches };
    }
    default:
      return undefined;
  }
}
