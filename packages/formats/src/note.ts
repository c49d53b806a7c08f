/** One thing a reader should know about how a file was taken in: a plain sentence, and what it is about. */
export interface Note {
  readonly what: string;
  /** e.g. 'Hole 7'. */
  readonly about?: string;
}

/** Notes beyond this many are only counted. */
const MOST_NOTES = 300;

/** Gathers notes in the order they come up; the same note twice is one. */
export interface NoteBook {
  add(what: string, about?: string): void;
  all(): readonly Note[];
}

export function noteBook(first: readonly Note[] = []): NoteBook {
  const notes = new Map<string, Note>();
  let more = 0;
  const keep = (note: Note) => {
    const key = `${note.about ?? ''}|${note.what}`;
    if (notes.has(key)) return;
    if (notes.size < MOST_NOTES) notes.set(key, note);
    else more += 1;
  };
  for (const note of first) keep(note);
  return {
    add: (what, about) => keep(about === undefined ? { what } : { what, about }),
    all: () => [...notes.values(), ...(more > 0 ? [{ what: `${more} more notes of this kind.` }] : [])],
  };
}

/** '1 bunker', '3 bunkers': counts in notes read as sentences. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** 'area of rough' becomes 'areas of rough': the first word counts. */
export function pluralOf(what: string): string {
  return what.replace(/^\S+/, (word) => `${word}s`);
}
