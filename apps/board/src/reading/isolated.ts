/** Letters that are written from right to left, and the marks that say so (Unicode Bidirectional Algorithm, types R and AL). */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\u200f\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;
/** First strong isolate, and the end of it. */
const [OPENS, CLOSES] = ['\u2068', '\u2069'];

/**
 * A name that stands in a line of our words: written from right to left it keeps to itself, and figures and signs after
 * it stay where they are. Other names are left as they are.
 *
 * Source: Unicode Standard Annex #9, 2.4 (explicit directional isolates).
 */
export function isolated(name: string): string {
  return RIGHT_TO_LEFT.test(name) && !name.startsWith(OPENS) ? `${OPENS}${name}${CLOSES}` : name;
}

/** The name alone again. */
export function withoutIsolation(name: string): string {
  return name.replaceAll(OPENS, '').replaceAll(CLOSES, '');
}
