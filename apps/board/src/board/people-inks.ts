/** One person's ink: pointer, selection and name tag. Never alone: the name stands beside it. */
export interface PersonInk {
  readonly name: string;
  readonly colour: string;
}

/** Eight inks, each at least 4.5:1 on paper (#F4EEDF) and under white letters. The server deals out the index. */
export const PEOPLE_INKS: readonly PersonInk[] = [
  { name: 'plum', colour: '#7A3E87' },
  { name: 'teal', colour: '#1E6B75' },
  { name: 'rust', colour: '#9C4A22' },
  { name: 'indigo', colour: '#3B4C9B' },
  { name: 'moss', colour: '#54661C' },
  { name: 'rose', colour: '#A5305C' },
  { name: 'bark', colour: '#6B4F3A' },
  { name: 'slate', colour: '#47566B' },
];

/** The ink of an index, whatever the index. */
export function inkOf(index: number): PersonInk {
  const whole = Number.isInteger(index) ? Math.abs(index) : 0;
  return PEOPLE_INKS[whole % PEOPLE_INKS.length] ?? { name: 'slate', colour: '#47566B' };
}

/** Two letters that stand for a name: 'Jo Oram' is JO, 'Jo' is JO. */
export function initialsOf(name: string): string {
  const words = name.trim().split(/\s+/).filter(Boolean);
  const [first, last] = [words[0] ?? '?', words.length > 1 ? (words.at(-1) ?? '') : ''];
  return (last ? first.slice(0, 1) + last.slice(0, 1) : first.slice(0, 2)).toLocaleUpperCase('en');
}
