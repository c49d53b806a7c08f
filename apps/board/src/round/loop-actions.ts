import type { NamedEdit, NewLoop } from '@loopwright/document';
import type { BaseId, HoleId, Loop, LoopId, Routing } from '@loopwright/model';

/** What can be done with a loop from its head. */
export type LoopAction =
  | { readonly do: 'change'; readonly name: string; readonly base: BaseId | null }
  | { readonly do: 'reverse' | 'copy' | 'remove' | 'join' }
  | { readonly do: 'split'; readonly after: HoleId }
  | { readonly do: 'add'; readonly name: string; readonly base: BaseId | null };

/** Where a copy of a loop is laid: beside the first, so that both are seen. Metres. */
const COPY_BY = { x: 60, y: -60 } as const;

/** The first letter that no loop of the routing goes by. */
export function nextLoopName({ loops }: Pick<Routing, 'loops'>): string {
  const taken = new Set(loops.map(({ name }) => name.trim().toLocaleUpperCase('en')));
  return [...'ABCDEFGHIJKL'].find((letter) => !taken.has(letter)) ?? `Loop ${loops.length + 1}`;
}

/** The loop that is listed after this one: the one it can be joined with. */
export function loopAfter({ loops }: Pick<Routing, 'loops'>, loop: LoopId): Loop | undefined {
  return loops[loops.findIndex(({ id }) => id === loop) + 1];
}

/** The edit an action on a loop makes; `undefined` where it would change nothing, or the loop is gone. */
export function editOfLoopAction(
  routing: Routing,
  id: LoopId,
  action: LoopAction,
  freshId: (letter: string) => string,
): NamedEdit | undefined {
  const loop = routing.loops.find((each) => each.id === id);
  if (!loop) return undefined;
  const of = { routing: routing.id, loop: id };
  switch (action.do) {
    case 'change':
      return changed(routing, loop, action);
    case 'reverse':
      return { ...of, edit: 'reverse loop' };
    case 'split':
      return { ...of, edit: 'split loop', after: action.after, as: newLoop(routing, loop, freshId) };
    case 'join': {
      const next = loopAfter(routing, id);
      return next && { ...of, edit: 'join loops', with: next.id };
    }
    case 'copy': {
      const holes = loop.holes.map((hole) => ({ hole, as: freshId('h') }));
      return { ...of, edit: 'copy loop', as: newLoop(routing, loop, freshId), holes, by: COPY_BY };
    }
    case 'remove':
      return { ...of, edit: 'remove loop' };
    case 'add': {
      const base = action.base === null ? {} : { base: action.base };
      return {
        edit: 'add loop',
        routing: routing.id,
        loop: { id: freshId('l'), name: action.name, ...base },
        after: id,
      };
    }
  }
}

/** A loop that leaves the same base, by the next free letter. */
function newLoop(routing: Routing, { base }: Loop, freshId: (letter: string) => string): NewLoop {
  return { id: freshId('l'), name: nextLoopName(routing), ...(base === undefined ? {} : { base }) };
}

function changed(
  routing: Routing,
  loop: Loop,
  { name, base }: Extract<LoopAction, { readonly do: 'change' }>,
): NamedEdit | undefined {
  const to = {
    ...(name === loop.name ? {} : { name }),
    ...(base === (loop.base ?? null) ? {} : { base }),
  };
  if (Object.keys(to).length === 0) return undefined;
  return { edit: 'change loop', routing: routing.id, loop: loop.id, to };
}
