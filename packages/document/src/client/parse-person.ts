import { isFields, isId, parseName, parseNumber, parsePoint, parseSome } from '@loopwright/model';
import { LIMITS } from '@loopwright/protocol';
import type { Person, PresenceState } from '../contract.ts';
import { parseNamedEdit } from '../edits/parse-named-edit.ts';

/** Holes that one person can show as selected. */
const MOST_SELECTED = 40;
/** Inks the server gives out. */
const INKS = 8;

/** What somebody shows, as far as it can be read. */
function parsePresenceState(value: unknown): PresenceState | undefined {
  if (!isFields(value)) return undefined;
  const pointer = parsePoint(value.pointer);
  const drag = parseNamedEdit(value.drag);
  return {
    ...(pointer && { pointer }),
    selection: parseSome(value.selection, MOST_SELECTED, (id) => (isId(id) ? id : undefined)),
    ...(isId(value.routing) && { routing: value.routing }),
    ...(drag && { drag }),
  };
}

/** Somebody else's untrusted presence; `undefined` for rubbish, and for what the server has not signed with a name. */
export function parsePerson(client: number, value: unknown): Person | undefined {
  const state = parsePresenceState(value);
  if (!state || !isFields(value)) return undefined;
  const name = parseName(value.name, LIMITS.mostNameLetters);
  const ink = parseNumber(value.ink, 0, INKS - 1);
  return name === undefined || ink === undefined ? undefined : { ...state, client, name, ink: Math.round(ink) };
}
