import {
  type Base,
  type Feature,
  type ImageLayer,
  isFields,
  isId,
  isOrderKey,
  LIMITS,
  type LoopFrame,
  parseBase,
  parseFeature,
  parseImageLayer,
  parseLines,
  parseLoop,
  parseName,
  parseRound,
  parseSiteMark,
  parseSketch,
  parseSketchShape,
  parseTeeSet,
  type Round,
  type SiteMark,
  type Sketch,
  type TeeSet,
} from '@loopwright/model';
import type { Parts } from '../cells.ts';
import { frozen } from '../plain-value.ts';
import { type PartReader, partReader, type Read } from './part-reader.ts';

/** The seat of anything but a hole: its place among its like, or taken away. */
type ThingSeat = { readonly in: 'plan' | 'removed'; readonly key: string };

/** An untrusted value as a seat. */
function parseThingSeat(value: unknown): ThingSeat | undefined {
  if (!isFields(value) || !isOrderKey(value.key)) return undefined;
  return value.in === 'plan' || value.in === 'removed' ? { in: value.in, key: value.key } : undefined;
}

/** Things whose seat cannot be read come first, in the order of their ids. */
const UNREADABLE_SEAT: ThingSeat = { in: 'plan', key: 'a0' };

/**
 * Where a thing sits. One that has no seat is not there: adding it was undone, and what somebody changed about it
 * meanwhile waits for it to come back.
 */
function seatOf(reader: PartReader, parts: Parts): ThingSeat {
  if ((parts.get('seat') ?? null) === null) return { in: 'removed', key: 'a0' };
  return reader.take('seat', parseThingSeat) ?? UNREADABLE_SEAT;
}

/**
 * A thing whose parts are named as its fields are. A part that the thing can do without is left out when it cannot be
 * read; without one it needs, the thing is not shown, and its parts are reported.
 */
function thingReader<T extends { readonly id: string }>(
  fields: readonly string[],
  parse: (value: unknown) => T | undefined,
): (group: string, parts: Parts) => Read<T> {
  return (group, parts) => {
    const reader = partReader(parts);
    const id = group.slice(group.lastIndexOf('/') + 1);
    const seat = seatOf(reader, parts);
    if (seat.in === 'removed') return { value: undefined, order: seat.key, unread: reader.unread() };
    const record: Record<string, unknown> = { id };
    for (const field of fields) {
      const value = parts.get(field) ?? null;
      if (value !== null) record[field] = value;
    }
    const value = parse(record);
    const kept: Readonly<Record<string, unknown>> = { ...value };
    for (const field of fields) if (field in record && !(field in kept)) reader.note(field);
    return { value: frozen(value), order: seat.key, unread: reader.unread() };
  };
}

export const readBase = thingReader<Base>(['name', 'apron', 'footprints', 'note'], parseBase);
export const readMark = thingReader<SiteMark>(['kind', 'at', 'verdict', 'note'], parseSiteMark);
export const readFeature = thingReader<Feature>(
  ['kind', 'name', 'geometry', 'allows', 'buffer', 'authority', 'note', 'height'],
  parseFeature,
);
export const readTeeSet = thingReader<TeeSet>(['name', 'player'], parseTeeSet);
export const readLoop = thingReader<LoopFrame>(['name', 'base'], parseLoop);
export const readRound = thingReader<Round>(['name', 'loops'], parseRound);

/** An image: which pixels is one decision, where they lie another, how faint a third. */
export function readImage(group: string, parts: Parts): Read<ImageLayer> {
  const reader = partReader(parts);
  const seat = seatOf(reader, parts);
  const pixels = reader.take('pixels', (value) => (isFields(value) ? value : undefined));
  if (seat.in === 'removed' || !pixels) return { value: undefined, order: seat.key, unread: reader.unread() };
  const value = parseImageLayer({
    ...pixels,
    id: group,
    placement: parts.get('placement'),
    opacity: parts.get('opacity') ?? undefined,
    name: reader.take('name', (name) => parseName(name, LIMITS.name)),
    scaledBy: parts.get('scaled-by') ?? undefined,
  });
  if (!value) reader.note('pixels');
  else if (parts.get('scaled-by') && !value.scaledBy) reader.note('scaled-by');
  return { value: frozen(value), order: seat.key, unread: reader.unread() };
}

/** Something drawn beside the plan. Who drew it, and in which ink, is one decision. */
export function readSketch(group: string, parts: Parts): Read<Sketch> {
  const reader = partReader(parts);
  const seat = seatOf(reader, parts);
  const shape = seat.in === 'removed' ? undefined : reader.take('shape', parseSketchShape);
  if (!shape) return { value: undefined, order: seat.key, unread: reader.unread() };
  const value = parseSketch({
    ...reader.take('drawn', (drawn) => (isFields(drawn) ? { by: drawn.by, ink: drawn.ink } : undefined)),
    id: group,
    shape,
    kept: reader.take('kept', (kept) => (typeof kept === 'boolean' ? kept : undefined)),
    note: reader.take('note', (note) => parseLines(note, LIMITS.note)),
  });
  return { value: frozen(value), order: seat.key, unread: reader.unread() };
}

/** A routing without its loops, rounds and holes. */
export interface RoutingFrame {
  readonly id: string;
  readonly name: string;
  readonly locked: boolean;
}

export const readRoutingFrame = thingReader<RoutingFrame>(['name', 'locked'], (value) => {
  if (!isFields(value) || !isId(value.id)) return undefined;
  return { id: value.id, name: parseName(value.name, LIMITS.name) ?? value.id, locked: value.locked === true };
});
