/** The six numbers of a world file, by the letters of its definition: x = A·column + B·row + C, y = D·column + E·row + F. */
export interface WorldFile {
  readonly a: number;
  readonly d: number;
  readonly b: number;
  readonly e: number;
  /** Map coordinates of the centre of the upper left pixel. */
  readonly c: number;
  readonly f: number;
}

/** What came of a world file; its notes are sentences about what was strange but taken. */
export type ReadWorldFile =
  | { readonly kind: 'world file'; readonly terms: WorldFile; readonly notes: readonly string[] }
  /** One sentence: what is wrong and what to do. */
  | { readonly kind: 'unreadable'; readonly why: string };

/** Six numbers need no more; a longer text is another file. */
const MOST_CHARACTERS = 4_000;
const PLAIN_NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?$/;
/** A pixel of under a centimetre, near zero longitude and latitude or not, is no survey of a golf course in metres or feet. */
const SMALLEST_PIXEL = 0.01;

const no = (why: string): ReadWorldFile => ({ kind: 'unreadable', why });

/**
 * The text of a world file, as it comes beside an image (.pgw, .jgw, .wld …): six numbers, a line each, in the order
 * A, D, B, E, C, F. It says neither its unit nor its coordinate system. Never throws.
 *
 * Source: the world file of Esri, as the GDAL project documents it ("WLD -- ESRI World File"): C and F are the
 * coordinates of the **centre** of the upper left pixel.
 */
export function readWorldFile(text: string): ReadWorldFile {
  if (text.length > MOST_CHARACTERS)
    return no('This is too long for a world file, which holds six numbers: choose the small file beside the image.');
  const words = text
    .replace(/^\ufeff/, '')
    .split(/\s+/)
    .filter((word) => word !== '');
  if (words.length === 0) return no('This world file is empty: copy it again from where the image came from.');
  const strange = words.find((word) => !PLAIN_NUMBER.test(word));
  if (strange !== undefined) return no(whyStrange(strange));
  if (words.length < 6)
    return no(`This world file ends after ${words.length} of its six numbers: copy it again, whole.`);
  if (words.length > 6)
    return no(`This file holds ${words.length} numbers, and a world file six: choose the small file beside the image.`);
  const [a = 0, d = 0, b = 0, e = 0, c = 0, f = 0] = words.map(Number);
  return checked({ a, d, b, e, c, f });
}

function whyStrange(word: string): string {
  const shown = word.slice(0, 24).replace(/[^\x20-\x7e]/g, '?');
  return /^[+-]?\d+,\d+$/.test(word)
    ? `'${shown}' is written with a comma: write the six numbers of the world file with a decimal point.`
    : `'${shown}' is no number: a world file holds six numbers and nothing else.`;
}

function checked(terms: WorldFile): ReadWorldFile {
  const { a, b, c, d, e, f } = terms;
  if (![a, b, c, d, e, f].every((term) => Number.isFinite(term) && Math.abs(term) <= 1e9))
    return no('A number of this world file is beyond any map: copy it again from where the image came from.');
  const turned = a * e - b * d;
  const across = Math.sqrt(a * a + d * d);
  const down = Math.sqrt(b * b + e * e);
  if (!(Math.abs(turned) > 1e-9 * across * down) || across === 0 || down === 0)
    return no('By this world file the image would have no area: its pixels need a width and a height.');
  if (Math.max(across, down) < SMALLEST_PIXEL && Math.abs(c) <= 180 && Math.abs(f) <= 90)
    return no(
      'The numbers of this world file look like degrees of longitude and latitude: save the image again in map coordinates of metres or feet.',
    );
  // Rows count downwards, so that an image that is not turned over has a negative a·e − b·d.
  const notes =
    turned > 0 ? ['This world file turns the image over, as seen in a mirror: check it against the land.'] : [];
  return { kind: 'world file', terms, notes };
}
