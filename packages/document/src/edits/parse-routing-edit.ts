import {
  type Fields,
  isFields,
  isId,
  LIMITS,
  parseEach,
  parseName,
  parsePoint,
  parseRound,
  type RoutingId,
} from '@loopwright/model';
import type { NewLoop, RoutingEdit } from './routing-edit.ts';

/** Untrusted fields as an edit of a routing, a loop or a round; `undefined` when they are none. */
export function parseRoutingEdit(value: Fields): RoutingEdit | undefined {
  if (!isId(value.routing)) return undefined;
  const { routing } = value;
  return parseOfRouting(value, routing) ?? parseOfLoop(value, routing) ?? parseOfRound(value, routing);
}

function parseOfRouting(value: Fields, routing: RoutingId): RoutingEdit | undefined {
  const { edit } = value;
  const name = parseName(value.name, LIMITS.name) ?? '';
  switch (edit) {
    case 'start routing': {
      const loops = parseEach(value.loops, LIMITS.loopsPerRouting, parseNewLoop);
      const rounds = parseEach(value.rounds, LIMITS.roundsPerRouting, parseRound);
      return loops && rounds && { edit, routing, name, loops, rounds };
    }
    case 'copy routing':
      return isId(value.as) ? { edit, routing, as: value.as, name } : undefined;
    case 'name routing':
      return { edit, routing, name };
    case 'lock routing':
    case 'unlock routing':
    case 'remove routing':
      return { edit, routing };
    default:
      return undefined;
  }
}

function parseNewLoop(value: unknown): NewLoop | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  const name = parseName(value.name, LIMITS.name) ?? '';
  return { id: value.id, name, ...(isId(value.base) && { base: value.base }) };
}

function parseOfLoop(value: Fields, routing: RoutingId): RoutingEdit | undefined {
  const { edit, loop, after } = value;
  if (edit === 'add loop') {
    const made = parseNewLoop(loop);
    return made && isId(after) ? { edit, routing, loop: made, after } : undefined;
  }
  if (!isId(loop)) return undefined;
  switch (edit) {
    case 'change loop':
      return parseChangeLoop(value, { routing, loop });
    case 'remove loop':
    case 'reverse loop':
      return { edit, routing, loop };
    case 'split loop': {
      const as = parseNewLoop(value.as);
      return as && isId(after) ? { edit, routing, loop, after, as } : undefined;
    }
    case 'join loops':
      return isId(value.with) ? { edit, routing, loop, with: value.with } : undefined;
    case 'copy loop': {
      const [as, by] = [parseNewLoop(value.as), parsePoint(value.by)];
      const holes = parseEach(value.holes, LIMITS.holesPerRouting, parseNamedCopy);
      return as && by && holes && { edit, routing, loop, as, holes, by };
    }
    default:
      return undefined;
  }
}

function parseNamedCopy(value: unknown) {
  if (!isFields(value) || !isId(value.hole) || !isId(value.as)) return undefined;
  return { hole: value.hole, as: value.as };
}

function parseChangeLoop(
  { to }: Fields,
  of: { readonly routing: RoutingId; readonly loop: string },
): RoutingEdit | undefined {
  if (!isFields(to)) return undefined;
  const name = parseName(to.name, LIMITS.name);
  const base = to.base === null ? null : isId(to.base) ? to.base : undefined;
  return { edit: 'change loop', ...of, to: { ...(name && { name }), ...(base !== undefined && { base }) } };
}

function parseOfRound(value: Fields, routing: RoutingId): RoutingEdit | undefined {
  const { edit, round, after, to } = value;
  if (edit === 'add round') {
    const made = parseRound(round);
    return made && isId(after) ? { edit, routing, round: made, after } : undefined;
  }
  if (!isId(round)) return undefined;
  if (edit === 'remove round') return { edit, routing, round };
  if (edit !== 'change round' || !isFields(to)) return undefined;
  const name = parseName(to.name, LIMITS.name);
  const loops = parseEach(to.loops, LIMITS.loopsPerRound, (id) => (isId(id) ? id : undefined));
  return { edit, routing, round, to: { ...(name && { name }), ...(loops && { loops }) } };
}
