/** Letters that fit the head without being cut. */
const MOST_LETTERS = 24;

/** What a note of the site begins with, short enough for the head: 'Invented site'; 'Note' where it begins at length. */
export function noteHeading(note: string): string {
  const [clause = ''] = note.trim().split(/[.:;,\n]/, 1);
  const words = clause.trim().replace(/^(an?|the)\s+/i, '');
  if (words === '' || words.length > MOST_LETTERS) return 'Note';
  return words.slice(0, 1).toLocaleUpperCase('en') + words.slice(1);
}
