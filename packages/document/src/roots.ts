/**
 * The collections of the shared document. Names are permanent once shipped. Every collection is flat: one key per
 * decision, so that changes to different things both survive when they are made at once.
 *
 * A key is a group (the thing it is about: `site`'s is empty, a hole's is `routing/hole`) and a part of it. Keys are
 * never deleted: `null` says that nothing is decided, removal is a seat.
 */
export const ROOTS = [
  'site',
  'bases',
  'marks',
  'features',
  'images',
  'sketches',
  'teeSets',
  'routings',
  'loops',
  'rounds',
  'holes',
  'settings',
  'dispositions',
] as const;

export type Root = (typeof ROOTS)[number];

/** An id that is also the name of something every object has would be found where nothing was put. */
const ID = '(?!constructor(?![a-z0-9-]))[a-z0-9][a-z0-9-]{0,39}';
const PART = `green|(?:tee|turn):${ID}`;

const GRAMMAR: Readonly<Record<Root, RegExp>> = {
  site: /^()(name|note|north|location|boundary|units|grid)$/,
  bases: new RegExp(`^(${ID})/(seat|name|apron|footprints|note)$`),
  marks: new RegExp(`^(${ID})/(seat|kind|at|verdict|note)$`),
  features: new RegExp(`^(${ID})/(seat|kind|name|geometry|allows|buffer|authority|note|height)$`),
  images: new RegExp(`^(${ID})/(seat|pixels|placement|opacity|name|scaled-by)$`),
  sketches: new RegExp(`^(${ID})/(seat|shape|drawn|kept|note)$`),
  teeSets: new RegExp(`^(${ID})/(seat|name|player)$`),
  routings: new RegExp(`^(${ID})/(seat|name|locked)$`),
  loops: new RegExp(`^(${ID}/${ID})/(seat|name|base)$`),
  rounds: new RegExp(`^(${ID}/${ID})/(seat|name|loops)$`),
  holes: new RegExp(
    `^(${ID}/${ID})/(seat|name|note|green|green-shape|par-men|par-women|verdict|corridor|waypoints|` +
      `tee:${ID}|turn:${ID}|pin:(?:${PART})|relation:(?:green|crossing|fairway):${ID})$`,
  ),
  settings: /^()([a-z0-9][a-z0-9-]{0,59})$/,
  dispositions: new RegExp(`^(${ID}/[a-z0-9-]+(?:\\|[a-z0-9:>-]*)*)()$`),
};

export interface Place {
  readonly group: string;
  readonly part: string;
}

/** Whether an untrusted word is the name of a collection. */
export function isRoot(name: string): name is Root {
  return Object.hasOwn(GRAMMAR, name);
}

/** An untrusted key as group and part; `undefined` when it does not follow the grammar of its collection. */
export function placeOf(root: Root, key: string): Place | undefined {
  const match = GRAMMAR[root].exec(key);
  if (match === null) return undefined;
  return { group: match[1] ?? '', part: match[2] ?? '' };
}

/** The key of a part of a group. */
export function keyOf(group: string, part: string): string {
  if (group === '') return part;
  return part === '' ? group : `${group}/${part}`;
}
