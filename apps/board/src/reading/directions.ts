const WORDS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const;
const LETTERS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;

const toDegrees = (radians: number) => (radians * 180) / Math.PI;
const turn = (degrees: number) => ((degrees % 360) + 360) % 360;

/** A bearing in whole degrees clockwise from north, 0 to 359. */
export function bearingDegrees(radians: number): number {
  return turn(Math.round(toDegrees(radians)));
}

/** '045°': three figures, as bearings are written. */
export function bearingWords(radians: number): string {
  return `${String(bearingDegrees(radians)).padStart(3, '0')}°`;
}

const sectorOf = (radians: number) => Math.round(turn(toDegrees(radians)) / 45) % 8;

/** The nearest of eight directions: 'north-east'. */
export function compassWord(radians: number): string {
  return WORDS[sectorOf(radians)] ?? 'north';
}

/** The nearest of eight directions as letters: 'NE'. */
export function compassLetters(radians: number): string {
  return LETTERS[sectorOf(radians)] ?? 'N';
}

/** The name of a sector of the rose, clockwise from north. */
export function sectorWord(index: number): string {
  return WORDS[index % 8] ?? 'north';
}

export function sectorLetters(index: number): string {
  return LETTERS[index % 8] ?? 'N';
}

/** An angle between two lines, in whole degrees: '31°'. */
export function angleWords(radians: number): string {
  return `${Math.round(toDegrees(radians))}°`;
}

/** Which way a move goes: radians clockwise from north. */
export function headingOf(by: { readonly x: number; readonly y: number }): number {
  return Math.atan2(by.x, by.y);
}
