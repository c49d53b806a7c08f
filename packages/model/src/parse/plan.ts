import { isId } from '../ids.ts';
import type { ModelPlayer, Plan, Routing, TeeSet } from '../plan.ts';
import { isSettingKey, SETTINGS, type SettingKey, type SettingOverrides } from '../settings/index.ts';
import { parseDisposition } from './disposition.ts';
import { type Fields, isFields, parseWord } from './fields.ts';
import { LIMITS } from './limits.ts';
import { parseNamedList } from './named-list.ts';
import { parseNumber } from './number.ts';
import { type ReadingNotes, readingNotes } from './reading-notes.ts';
import { type KnownIds, parseRouting } from './routing.ts';
import { parseSite } from './site.ts';
import { parseName, parseText } from './text.ts';

export type ParsedPlan =
  | { readonly kind: 'plan'; readonly plan: Plan; readonly notes: readonly string[] }
  /** `why` is one sentence with what to do. */
  | { readonly kind: 'not-a-plan'; readonly why: string };

/**
 * A whole plan from an untrusted JSON value, e.g. of a board file.
 *
 * What cannot be read is left out and noted, sentence by sentence; never throws. A file that is no plan, of another
 * version or far beyond every limit is refused in one sentence.
 *
 * Cost: O(size of the value), bounded by LIMITS.
 */
export function parsePlan(value: unknown): ParsedPlan {
  const why = whyNotAPlan(value);
  if (why !== undefined || !isFields(value))
    return { kind: 'not-a-plan', why: why ?? 'This is not a Loopwright board file.' };
  const notes = readingNotes();
  const site = parseSite(value.site, notes);
  const teeSets = parseTeeSets(value.teeSets, notes);
  const known = { bases: new Set(site.bases.map(({ id }) => id)), teeSets: new Set(teeSets.map(({ id }) => id)) };
  const routings = parseRoutings(value.routings, known, notes);
  if (routings.length === 0)
    return { kind: 'not-a-plan', why: 'No routing in this board file could be read: export the board again.' };
  const plan: Plan = {
    loopwright: 1,
    site,
    teeSets,
    routings,
    settings: parseSettings(value.settings, notes),
    dispositions: parseDispositions(value.dispositions, routings, notes),
  };
  noteUnknownFields(value, plan, notes);
  return { kind: 'plan', plan, notes: notes.all() };
}

function whyNotAPlan(value: unknown): string | undefined {
  if (!isFields(value) || !Object.hasOwn(value, 'loopwright'))
    return "This is not a Loopwright board file: it has no 'loopwright' version. Export the board again, or drop a GeoJSON course.";
  if (value.loopwright !== 1)
    return `This board file has version ${parseText(String(value.loopwright), 20)}, and this page reads version 1: reload the page or update Loopwright, then try again.`;
  if (!Array.isArray(value.routings)) return 'This board file holds no routings: export the board again.';
  if (value.routings.length > LIMITS.routings)
    return `This board file holds ${value.routings.length} routings; a board takes at most ${LIMITS.routings}: export fewer.`;
  for (const routing of value.routings) {
    const holes = isFields(routing) && Array.isArray(routing.holes) ? routing.holes.length : 0;
    if (holes > LIMITS.holesPerRouting)
      return `This board file holds a routing of ${holes} holes; a board takes at most ${LIMITS.holesPerRouting}: split it into several boards.`;
  }
  return undefined;
}

export function parseModelPlayer(value: unknown): ModelPlayer | undefined {
  return parseWord(value, ['scratch man', 'bogey man', 'scratch woman', 'bogey woman']);
}

/** A set of tees and the model player it is made for. */
export function parseTeeSet(value: unknown): TeeSet | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  const player = parseModelPlayer(value.player) ?? 'scratch man';
  return { id: value.id, name: parseName(value.name, LIMITS.name) ?? value.id, player };
}

function parseTeeSets(value: unknown, notes: ReadingNotes): readonly TeeSet[] {
  const teeSets = parseNamedList(value, { one: 'Tee set', most: LIMITS.teeSets }, parseTeeSet, notes);
  if (teeSets.length > 0) return teeSets;
  notes.add("No tee set could be read: the board has one, 'Back'.");
  return [{ id: 'back', name: 'Back', player: 'scratch man' }];
}

/** Routings are told apart while they are read: each parsed one is compared with nothing but itself. */
function parseRoutings(value: unknown, known: KnownIds, notes: ReadingNotes): readonly Routing[] {
  if (!Array.isArray(value)) return [];
  const taken = new Set<string>();
  return value.flatMap((member: unknown, index) => {
    const routing = parseRouting(member, known, notes);
    if (routing === undefined) notes.add(`Routing number ${index + 1} could not be read and was left out.`);
    if (routing === undefined) return [];
    const id = taken.has(routing.id) ? `${routing.id.slice(0, 34)}-${index + 1}` : routing.id;
    if (id !== routing.id) notes.add(`Routing '${routing.id}' is there twice; the later one is now '${id}'.`);
    taken.add(id);
    return [{ ...routing, id }];
  });
}

/** A limit as one board may set it: a number within what makes sense for it. */
export function parseSettingValue(key: SettingKey, value: unknown): number | undefined {
  return parseNumber(value, SETTINGS[key].least, SETTINGS[key].most);
}

function parseSettings(value: unknown, notes: ReadingNotes): SettingOverrides {
  if (!isFields(value)) return {};
  const settings: { [Key in SettingKey]?: number } = {};
  for (const [name, untrusted] of Object.entries(value).slice(0, 500)) {
    const number = isSettingKey(name) ? parseSettingValue(name, untrusted) : undefined;
    if (isSettingKey(name) && number !== undefined) settings[name] = number;
    else notes.add(`Setting '${parseText(name, 60)}' could not be read: its default holds.`);
  }
  return settings;
}

function parseDispositions(value: unknown, routings: readonly Routing[], notes: ReadingNotes): Plan['dispositions'] {
  if (!Array.isArray(value)) return [];
  const known = new Set(routings.map(({ id }) => id));
  const dispositions = value.slice(0, LIMITS.dispositions).flatMap((member: unknown) => {
    const disposition = parseDisposition(member);
    return disposition && known.has(disposition.routing) ? [disposition] : [];
  });
  const lost = value.length - dispositions.length;
  if (lost > 0)
    notes.add(`${lost} decisions about findings could not be read and were left out: those findings are open.`);
  return dispositions;
}

function noteUnknownFields(value: Fields, plan: Plan, notes: ReadingNotes): void {
  for (const name of Object.keys(value).slice(0, 100)) {
    if (!Object.hasOwn(plan, name)) notes.add(`'${parseText(name, 60)}' is not a part of a board and was left out.`);
  }
}
