import type { Plan } from '@loopwright/model';

/**
 * Who chose which place of which green, so that an undo can be caught taking back somebody else's. Random places to the
 * millimetre are as good as unique.
 */
export interface Authorship {
  /** What an edit of this page has just changed is its own. */
  wrote(author: string, before: Plan, after: Plan): void;
  /** Greens that a page's undo or redo moved although their place was another's choice. */
  takenBack(author: string, before: Plan, after: Plan): readonly string[];
}

function greens(plan: Plan): ReadonlyMap<string, string> {
  const places = new Map<string, string>();
  for (const { id, holes } of plan.routings) {
    for (const { id: hole, green } of holes) {
      if (green) places.set(`${id}/${hole}`, `${green.centre.x} ${green.centre.y}`);
    }
  }
  return places;
}

function moved(
  before: Plan,
  after: Plan,
): readonly { readonly hole: string; readonly from: string; readonly to: string }[] {
  const [was, is] = [greens(before), greens(after)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((hole) => {
    const [from, to] = [was.get(hole) ?? '', is.get(hole) ?? ''];
    return from === to ? [] : [{ hole, from, to }];
  });
}

export function openAuthorship(): Authorship {
  const authors = new Map<string, Set<string>>();
  const add = (hole: string, place: string, author: string) => {
    const key = `${hole} ${place}`;
    authors.set(key, (authors.get(key) ?? new Set()).add(author));
  };
  const wrote: Authorship['wrote'] = (author, before, after) => {
    for (const { hole, to } of moved(before, after)) add(hole, to, author);
  };
  return {
    wrote,
    takenBack(author, before, after) {
      const others = moved(before, after).filter(
        ({ hole, from }) => from !== '' && !authors.get(`${hole} ${from}`)?.has(author),
      );
      wrote(author, before, after);
      return others.map(({ hole }) => hole);
    },
  };
}
