import {
  type Base,
  type Feature,
  type ImageLayer,
  isFields,
  isList,
  LIMITS,
  type Plan,
  parseBase,
  parseFeature,
  parseImageLayer,
  parseSiteMark,
  parseSketch,
  parseTeeSet,
  type SiteMark,
  type Sketch,
  type TeeSet,
} from '@loopwright/model';
import type { SeatedRoot } from './seat-thing.ts';
import { partsOfImage, partsOfSketch } from './thing-parts.ts';

/** A kind of thing that a board has a list of: where it is kept, how it is read, and how many there may be. */
export interface ThingKind<T extends { readonly id: string }> {
  readonly root: SeatedRoot;
  readonly most: number;
  /** Those on the plan, in their order. */
  listed(plan: Plan): readonly T[];
  /** All of it, or nothing: an edit never leaves a part out silently. */
  parse(value: unknown): T | undefined;
  /** Its parts as they stand in the document; `undefined` where nothing is decided. */
  parts(thing: T): Readonly<Record<string, unknown>>;
}

function ownFields<T extends { readonly id: string }>(thing: T): Readonly<Record<string, unknown>> {
  const { id: _, ...parts } = thing;
  return parts;
}

export const BASES: ThingKind<Base> = {
  root: 'bases',
  most: LIMITS.bases,
  listed: ({ site }) => site.bases,
  parse(value) {
    const base = parseBase(value);
    if (!base || !isFields(value) || value.footprints === undefined || value.footprints === null) return base;
    const isWhole = isList(value.footprints, LIMITS.footprints) && value.footprints.length === base.footprints.length;
    return isWhole ? base : undefined;
  },
  parts: ownFields,
};

export const MARKS: ThingKind<SiteMark> = {
  root: 'marks',
  most: LIMITS.siteMarks,
  listed: ({ site }) => site.marks,
  parse: parseSiteMark,
  parts: ownFields,
};

export const FEATURES: ThingKind<Feature> = {
  root: 'features',
  most: LIMITS.features,
  listed: ({ site }) => site.features,
  parse: parseFeature,
  parts: ownFields,
};

export const IMAGES: ThingKind<ImageLayer> = {
  root: 'images',
  most: LIMITS.imageLayers,
  listed: ({ site }) => site.images,
  parse: parseImageLayer,
  parts: partsOfImage,
};

/** On the board fewer can be added than a file may bring. */
export const TEE_SETS: ThingKind<TeeSet> = {
  root: 'teeSets',
  most: LIMITS.teeSetsOnBoard,
  listed: ({ teeSets }) => teeSets,
  parse: parseTeeSet,
  parts: ownFields,
};

export const SKETCHES: ThingKind<Sketch> = {
  root: 'sketches',
  most: LIMITS.sketches,
  listed: ({ site }) => site.sketches ?? [],
  parse: parseSketch,
  parts: partsOfSketch,
};
