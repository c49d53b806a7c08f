import { type Allows, type FeatureKind, presetOf } from '@loopwright/model';

/** What may be done there, in the order it is asked. */
export const ALLOWS: readonly (keyof Allows)[] = ['carry', 'walk', 'mow', 'build'];

const MEANS: Readonly<Record<keyof Allows, string>> = {
  carry: 'play over it',
  walk: 'walk in it',
  mow: 'mow it',
  build: 'build on it',
};

/** What one permission means. */
export const allowMeans = (what: keyof Allows): string => MEANS[what];

/** What a golfer or the works may do there: 'play over it, walk in it'; 'nothing is allowed'. */
export function allowedWords(allows: Allows): string {
  const allowed = ALLOWS.filter((what) => allows[what]);
  if (allowed.length === 0) return 'nothing is allowed';
  return allowed.length === ALLOWS.length ? 'everything is allowed' : `allowed: ${allowed.map(allowMeans).join(', ')}`;
}

/** What a feature of this kind allows to begin with. */
export const allowsWords = (kind: FeatureKind): string => allowedWords(presetOf(kind).allows);
