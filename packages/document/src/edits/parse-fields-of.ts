import {
  type Base,
  FEATURE_KINDS,
  type Feature,
  type ImageLayer,
  isFields,
  LIMITS,
  parseAllows,
  parseEach,
  parseFeatureGeometry,
  parseInk,
  parseLines,
  parseMarkKind,
  parseMarkVerdict,
  parseModelPlayer,
  parseNumber,
  parsePlacement,
  parsePoint,
  parseRing,
  parseScaledBy,
  parseSketchShape,
  parseText,
  parseWord,
  type SiteMark,
  type Sketch,
  type TeeSet,
} from '@loopwright/model';
import type { FieldsOf } from './site-edit.ts';

/** An image as it can be changed: where it lies, not which pixels. */
type PlacedImage = Omit<ImageLayer, 'blob' | 'widthPixels' | 'heightPixels'>;

/** A field of a change: its value, `null` where it is taken away, or nothing where the change does not speak of it. */
type Said<Name extends string, T> = { readonly [N in Name]?: T | null };

/** Reads the fields of a change one by one, and remembers whether one of them could not be read. */
interface Taking {
  take<Name extends string, T>(name: Name, parse: (value: unknown) => T | undefined): Said<Name, T>;
  /** What was read; `undefined` when a field could not be. */
  all<T>(fields: T): T | undefined;
}

function taking(value: unknown): Taking {
  const fields = isFields(value) ? value : undefined;
  let isReadable = fields !== undefined;
  return {
    take<Name extends string, T>(name: Name, parse: (value: unknown) => T | undefined): Said<Name, T> {
      const field = fields && Object.hasOwn(fields, name) ? fields[name] : undefined;
      if (field === undefined) return {};
      const read = field === null ? null : parse(field);
      if (read === undefined) isReadable = false;
      // One field of that name: the compiler does not follow a name that is only known by its type.
      return { [name]: read } as Said<Name, T>;
    },
    all: (read) => (isReadable ? read : undefined),
  };
}

/** A name or note may be taken away by an empty one. */
const name = (value: unknown) => parseText(value, LIMITS.name);
const note = (value: unknown) => parseLines(value, LIMITS.note);
const boolean = (value: unknown) => (typeof value === 'boolean' ? value : undefined);

export function parseBaseFields(value: unknown): FieldsOf<Base> | undefined {
  const { take, all } = taking(value);
  return all({
    ...take('name', name),
    ...take('apron', parsePoint),
    ...take('footprints', (rings) => parseEach(rings, LIMITS.footprints, parseRing)),
    ...take('note', note),
  });
}

export function parseFeatureFields(value: unknown): FieldsOf<Feature> | undefined {
  const { take, all } = taking(value);
  return all({
    ...take('kind', (kind) => parseWord(kind, FEATURE_KINDS)),
    ...take('name', name),
    ...take('geometry', parseFeatureGeometry),
    ...take('allows', (allows) => (isFields(allows) ? parseAllows(allows) : undefined)),
    ...take('buffer', (buffer) => parseNumber(buffer, 0, LIMITS.buffer)),
    ...take('authority', name),
    ...take('note', note),
    ...take('height', (height) => parseNumber(height, 0, LIMITS.height)),
  });
}

export function parseMarkFields(value: unknown): FieldsOf<SiteMark> | undefined {
  const { take, all } = taking(value);
  return all({
    ...take('kind', parseMarkKind),
    ...take('at', parsePoint),
    ...take('verdict', parseMarkVerdict),
    ...take('note', note),
  });
}

export function parseImageFields(value: unknown): FieldsOf<PlacedImage> | undefined {
  const { take, all } = taking(value);
  return all({
    ...take('placement', parsePlacement),
    ...take('opacity', (opacity) => parseNumber(opacity, 0, 1)),
    ...take('name', name),
    ...take('scaledBy', parseScaledBy),
  });
}

export function parseTeeSetFields(value: unknown): FieldsOf<TeeSet> | undefined {
  const { take, all } = taking(value);
  return all({ ...take('name', name), ...take('player', parseModelPlayer) });
}

export function parseSketchFields(value: unknown): FieldsOf<Sketch> | undefined {
  const { take, all } = taking(value);
  return all({
    ...take('shape', parseSketchShape),
    ...take('by', name),
    ...take('ink', parseInk),
    ...take('kept', boolean),
    ...take('note', note),
  });
}
