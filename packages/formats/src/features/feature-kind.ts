import {
  FEATURE_KINDS,
  type Feature,
  type FeatureKind,
  LIMITS,
  parseName,
  parseNumber,
  toMillimetre,
} from '@loopwright/model';
import type { Tags } from '../geojson/element.ts';
import { kindOf } from '../geojson/kind-of.ts';

/** What a thing of a file is on the land, and how that is known. */
export type KindOfFeature =
  | { readonly is: 'feature'; readonly kind: FeatureKind; readonly by: 'said' | 'tags' | 'words' | 'nothing' }
  | { readonly is: 'left out'; readonly what: string };

/** Properties in which people and programs say what a thing is, in the order they are looked at. */
const KIND_FIELDS = ['kind', 'Kind', 'KIND', 'type', 'Type', 'TYPE', 'layer', 'Layer', 'LAYER'];
const NAME_FIELDS = ['name', 'Name', 'NAME', 'description', 'Description'];

/** Words that tell a kind, the more particular first: 'flood line' before 'river', 'footpath' before 'road'. */
const WORDS: readonly (readonly [RegExp, FeatureKind])[] = [
  [/\bflood/i, 'flood line'],
  [/\b(easement|right of way|servitude)/i, 'easement'],
  [/\b(wetland|marsh|bog|fen|swamp|mire|reedbed)/i, 'wetland'],
  [/\b(protected|nature reserve|habitat|conservation|monument|heritage)/i, 'protected'],
  [/\b(footpath|bridleway|cycle ?(way|path)|public path|trail|towpath)/i, 'public path'],
  [/\b(road|street|highway|motorway|lane|avenue)\b/i, 'public road'],
  [/\b(power ?line|pipe ?line|pylon|overhead line|gas main|water main|sewer|utility|utilities)/i, 'utility'],
  [/\b(neighbour|neighbor|adjoining owner)/i, 'neighbour'],
  [/\b(house|barn|building|shed|farmhouse|dwelling)s?\b/i, 'building'],
  [/\b(wood|woods|woodland|forest|copse|spinney|plantation|trees?|hedge|hedgerow)\b/i, 'trees'],
  [/\b(pond|lake|river|stream|brook|ditch|canal|reservoir|mere|tarn|loch|burn|creek|water)s?\b/i, 'water'],
  [/\bbunkers?\b/i, 'bunker'],
  [/\bfairways?\b/i, 'fairway'],
  [/\b(practice|driving) range\b/i, 'range'],
  [/\b(cart|buggy|course) path/i, 'course path'],
  [/\b(landmark|church tower|lighthouse|steeple)\b/i, 'landmark'],
];

/**
 * What a thing is: by a kind of ours that the file names, else by its map tags, else by the words of its kind and name,
 * else 'other'. The last two are guesses, to be told. Holes are no features.
 */
export function kindOfFeature(tags: Tags): KindOfFeature {
  const words = KIND_FIELDS.flatMap((field) => tags[field] ?? []);
  const said = words.flatMap((word) => FEATURE_KINDS.find((kind) => kind === word.trim().toLowerCase()) ?? [])[0];
  if (said) return { is: 'feature', kind: said, by: 'said' };
  const mapped = kindOf(tags);
  if (mapped.is === 'hole') return { is: 'left out', what: 'hole' };
  if (mapped.is === 'left out') return mapped;
  if (mapped.is === 'feature') return { is: 'feature', kind: mapped.kind, by: 'tags' };
  if (mapped.is === 'clubhouse') return { is: 'feature', kind: 'building', by: 'tags' };
  if (mapped.is !== 'unknown') return { is: 'feature', kind: 'other', by: 'tags' };
  const text = [...words, ...NAME_FIELDS.flatMap((field) => tags[field] ?? [])].join(' · ');
  const guess = WORDS.find(([pattern]) => pattern.test(text));
  return guess ? { is: 'feature', kind: guess[1], by: 'words' } : { is: 'feature', kind: 'other', by: 'nothing' };
}

/** What a thing is called: its name, else what a tee, green or outline without one is. */
export function nameOfFeature(tags: Tags): string | undefined {
  const name = tags.name ?? tags.Name ?? tags.NAME;
  if (name !== undefined) return name;
  const mapped = kindOf(tags);
  if (mapped.is === 'tee') return 'Tee';
  if (mapped.is === 'green') return 'Green';
  return mapped.is === 'boundary' ? 'Course outline' : undefined;
}

/** What else a file says of a thing under the names we use ourselves; lengths in metres. */
export function saidOf(tags: Tags): Partial<Pick<Feature, 'buffer' | 'authority' | 'note' | 'height'>> {
  const metres = (text: string | undefined, most: number) =>
    text === undefined || text === '' ? undefined : parseNumber(Number(text), 0, most);
  const buffer = metres(tags.buffer, LIMITS.buffer);
  const height = metres(tags.height, LIMITS.height);
  const authority = parseName(tags.authority, LIMITS.name);
  const note = parseName(tags.note, LIMITS.note);
  return {
    ...(buffer !== undefined && { buffer: toMillimetre(buffer) }),
    ...(height !== undefined && { height: toMillimetre(height) }),
    ...(authority && { authority }),
    ...(note && { note }),
  };
}
