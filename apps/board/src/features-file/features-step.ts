import type { NamedEdit } from '@loopwright/document';
import type { CoordinateReading, FeaturesFile, MapUnit } from '@loopwright/formats';
import { FEATURE_KINDS, type Feature, type FeatureKind } from '@loopwright/model';

type Read = Extract<FeaturesFile, { kind: 'features' }>;

/** Where a file of features is on its way to the board. Nothing is written before somebody says so. */
export type FeaturesStep =
  | { readonly at: 'reading'; readonly file: string }
  | {
      readonly at: 'asking';
      readonly file: string;
      readonly why: string;
      readonly readings: readonly CoordinateReading['as'][];
    }
  | { readonly at: 'ready'; readonly file: string; readonly read: Read }
  | { readonly at: 'unreadable'; readonly file: string; readonly why: string };

/** What follows from the answer about a file. */
export function stepAfter(file: string, answer: FeaturesFile): FeaturesStep {
  switch (answer.kind) {
    case 'features':
      return { at: 'ready', file, read: answer };
    case 'which-coordinates':
      return { at: 'asking', file, why: answer.why, readings: answer.readings };
    case 'unreadable':
      return { at: 'unreadable', file, why: answer.why };
  }
}

/** How the numbers of a file are meant, as somebody said. */
export function readingOf(as: CoordinateReading['as'], unit: MapUnit): CoordinateReading {
  return as === 'longitude and latitude' ? { as } : { as, unit };
}

/** How many of which kind, in the order kinds are offered. */
export function countsOf(
  features: readonly Feature[],
): readonly { readonly kind: FeatureKind; readonly count: number }[] {
  const counts = new Map<FeatureKind, number>();
  for (const { kind } of features) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return FEATURE_KINDS.flatMap((kind) => {
    const count = counts.get(kind);
    return count === undefined ? [] : [{ kind, count }];
  });
}

/** All of a file as one step, with the survey grid it brings. */
export function addAll({ features, grid }: Read): NamedEdit {
  const add = { edit: 'add features', features } as const;
  return grid
    ? { edit: 'several', does: `add ${featuresWords(features.length)}`, edits: [{ edit: 'set grid', grid }, add] }
    : add;
}

export const featuresWords = (count: number): string => (count === 1 ? '1 feature' : `${count} features`);
