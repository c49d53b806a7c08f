import type { Allows, FeatureKind } from './site.ts';

interface Preset {
  readonly allows: Allows;
  /** Metres kept around it; 0 where the limits of the analysis say it. */
  readonly buffer: number;
}

const allowing = (...what: readonly (keyof Allows)[]): Preset => ({
  allows: {
    carry: what.includes('carry'),
    walk: what.includes('walk'),
    mow: what.includes('mow'),
    build: what.includes('build'),
  },
  buffer: 0,
});

/**
 * What each kind of feature allows to begin with; the designer changes it where the land says otherwise.
 *
 * Common practice, no source: where people or protected ground are concerned, nothing is allowed until somebody with
 * the right to say so has said it.
 */
const PRESETS: Readonly<Record<FeatureKind, Preset>> = {
  water: allowing('carry'),
  wetland: allowing('carry'),
  trees: allowing('walk'),
  protected: allowing(),
  easement: allowing('carry', 'walk', 'mow'),
  'flood line': allowing('carry', 'walk', 'mow'),
  building: allowing(),
  'public road': allowing(),
  'public path': allowing('walk'),
  neighbour: allowing(),
  utility: allowing('carry', 'walk', 'mow'),
  landmark: allowing('carry', 'walk', 'mow', 'build'),
  'ground unit': allowing('carry', 'walk', 'mow', 'build'),
  range: allowing('mow'),
  bunker: allowing('carry', 'walk', 'build'),
  fairway: allowing('carry', 'walk', 'mow', 'build'),
  'course path': allowing('carry', 'walk', 'build'),
  other: allowing('carry', 'walk', 'mow', 'build'),
};

/** What a new feature of this kind allows, and the distance kept around it (m). */
export function presetOf(kind: FeatureKind): Preset {
  return PRESETS[kind];
}
