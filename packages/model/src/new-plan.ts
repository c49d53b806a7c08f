import { LIMITS } from './parse/limits.ts';
import { parseName } from './parse/text.ts';
import type { Loop, Plan, Round, TeeSet } from './plan.ts';
import type { LengthUnit } from './units.ts';

/** What a new board is laid out for: nines, or a loop of six. */
export type StartingHoles = 9 | 18 | 27 | 'loop of six';

/** In the order a list offers them. */
export const STARTING_HOLES: readonly StartingHoles[] = [9, 18, 27, 'loop of six'];

/** What is said of a board before it is made. */
export interface NewPlan {
  /** The site's; an empty one leaves it unnamed. */
  readonly name: string;
  readonly units: LengthUnit;
  readonly holes: StartingHoles;
  /** Makes an id that begins with the letter. */
  freshId(letter: string): string;
}

/** Common practice, no source: three sets of tees cover the players that most clients ask about. From the back. */
const TEE_SETS: readonly TeeSet[] = [
  { id: 'back', name: 'Back', player: 'scratch man' },
  { id: 'middle', name: 'Middle', player: 'bogey man' },
  { id: 'forward', name: 'Forward', player: 'bogey woman' },
];

/**
 * The plan a new board begins with: bare land, three tee sets, and one routing whose loops and rounds wait for holes.
 *
 * Eighteen holes are two nines played as one round; twenty-seven are three nines and the three rounds of two
 * (A + B, B + C, C + A). A name that cannot be one leaves the site unnamed: an outcome, not an error.
 */
export function newPlan({ name, units, holes, freshId }: NewPlan): Plan {
  const loops = NAMES[holes].map((title): Loop => ({ id: freshId('l'), name: title, holes: [] }));
  return {
    loopwright: 1,
    site: {
      name: parseName(name, LIMITS.name) ?? 'Unnamed site',
      north: 0,
      bases: [],
      marks: [],
      features: [],
      images: [],
      units,
    },
    teeSets: TEE_SETS,
    routings: [{ id: 'a', name: 'A', locked: false, loops, rounds: roundsOf(loops, freshId), holes: [], spare: [] }],
    settings: {},
    dispositions: [],
  };
}

const NAMES: Readonly<Record<StartingHoles, readonly string[]>> = {
  9: ['Nine'],
  18: ['Out', 'In'],
  27: ['A', 'B', 'C'],
  'loop of six': ['Six'],
};

/** Three loops are played two by two, each of them once first and once second; one or two make one round. */
function roundsOf(loops: readonly Loop[], freshId: NewPlan['freshId']): readonly Round[] {
  const played = loops.length === 3 ? loops.map((loop, index) => [loop, loops[(index + 1) % 3] ?? loop]) : [loops];
  return played.map((inRound) => ({
    id: freshId('r'),
    name: played.length === 1 ? 'Round' : inRound.map(({ name }) => name).join(' + '),
    loops: inRound.map(({ id }) => id),
  }));
}
