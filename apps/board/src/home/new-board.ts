import { type LengthUnit, makeId, newPlan, type Plan, STARTING_HOLES, type StartingHoles } from '@loopwright/model';

/** What a person says about a board that is to be made. */
export interface NewBoardWishes {
  readonly name: string;
  readonly units: LengthUnit;
  readonly holes: StartingHoles;
  /** Pictures of the site, and their world files, that are laid on it at once. */
  readonly files: readonly File[];
}

export const FIRST_WISHES: NewBoardWishes = { name: '', units: 'yards', holes: 18, files: [] };

export const UNIT_CHOICES = [
  { key: 'yards', words: 'Yards' },
  { key: 'metres', words: 'Metres' },
] as const;

/** How many holes a board may begin with, by the key of its choice. */
export const HOLES_CHOICES = STARTING_HOLES.map((holes) => ({
  key: String(holes),
  words: typeof holes === 'number' ? `${holes} holes` : 'A loop of six',
}));

/** The holes behind the key of a choice. */
export function holesOf(key: string): StartingHoles {
  return STARTING_HOLES.find((holes) => String(holes) === key) ?? FIRST_WISHES.holes;
}

/** What is said of the pictures that go along. */
export function filesWords(files: readonly File[]): string {
  const names = files.map(({ name }) => name);
  if (names.length === 0) return 'A plan or an aerial: PNG, JPEG or WebP. It can be dropped on the board later too.';
  return `${names.join(', ')}: laid on the board as soon as it is open.`;
}

/** The plan a new board is made with. @param random  numbers in [0, 1) for its ids */
export function planFor({ name, units, holes }: NewBoardWishes, random: () => number): Plan {
  return newPlan({ name: name.trim(), units, holes, freshId: (letter) => makeId(letter, random) });
}
