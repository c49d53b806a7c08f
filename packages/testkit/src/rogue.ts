import { encodeFrame } from '@loopwright/protocol';
import * as encoding from 'lib0/encoding';
import { pick } from './random-pick.ts';

type Random = () => number;

const RUBBISH: readonly unknown[] = [
  1e308,
  -5,
  'a0',
  '',
  true,
  [],
  [1, [2, [3]]],
  {},
  { x: 'left', y: 4 },
  { x: 1e300, y: 0 },
  { in: 'loop', loop: 'nowhere', key: 'a5' },
  { in: 'loop', loop: 'out', key: '!!' },
  { in: 'spare', key: 'zzz' },
  { length: 1e9, width: -1, bearing: 7e7 },
  'x'.repeat(3000),
];
/** Values that no honest page can write: refused, and the connection closed. */
const FORBIDDEN: readonly unknown[] = [Number.NaN, Number.POSITIVE_INFINITY, undefined, 12n, new Uint8Array([1, 2])];
const ROOTS = ['holes', 'holes', 'holes', 'features', 'loops', 'routings', 'settings', 'site', 'sketches', 'images'];

/** Where rubbish goes: keys of the plan, some of which no page of ours reads. */
function rubbishKey(root: string, hole: string, random: Random): string {
  const part = pick(['seat', 'green', 'green-shape', 'tee:back', 'turn:t1', 'verdict', 'waypoints', 'par-men'], random);
  if (root === 'holes') return `a/${hole}/${part}`;
  if (root === 'loops') return 'a/out/name';
  if (root === 'routings') return 'a/name';
  if (root === 'features') return pick(['pond/geometry', 'pond/buffer', 'other/kind'], random) ?? 'pond/kind';
  if (root === 'sketches') return pick(['k1/seat', 'k1/shape', 'k1/drawn'], random) ?? 'k1/kept';
  if (root === 'images') return pick(['i1/seat', 'i1/pixels', 'i1/placement'], random) ?? 'i1/name';
  return root === 'site' ? (pick(['boundary', 'units', 'grid'], random) ?? 'name') : 'no-such-setting';
}

/**
 * A frame as a program of someone else's might send it: well formed for the wire, rubbish for the plan. Written by hand
 * from the published form of an update (Yjs 13, update version 1): one value under one key.
 *
 * @param clock  of that client, counted by the caller: one for each frame that was taken
 */
export function rogueFrame(client: number, clock: number, hole: string, random: Random): Uint8Array {
  const chance = random();
  if (chance < 0.08)
    return Uint8Array.from({ length: 1 + Math.floor(random() * 40) }, () => Math.floor(random() * 256));
  const root = chance < 0.12 ? 'no-such-root' : (pick(ROOTS, random) ?? 'holes');
  const key = chance < 0.16 ? '__proto__' : rubbishKey(root, hole, random);
  const value = chance < 0.22 ? pick(FORBIDDEN, random) : pick(RUBBISH, random);
  return encodeFrame({ kind: 'update', update: updateWith({ client, clock, root, key, value }) });
}

/** The greeting that lets later updates through: an answer without news. */
export const ROGUE_GREETING: Uint8Array = encodeFrame({ kind: 'step 2', update: Uint8Array.from([0, 0]) });

interface OneValue {
  readonly client: number;
  readonly clock: number;
  readonly root: string;
  readonly key: string;
  readonly value: unknown;
}

/** Content of any JSON value, with a key of its own under a collection's name. */
const INFO_ANY_WITH_KEY = 8 | 0x20;

function updateWith({ client, clock, root, key, value }: OneValue): Uint8Array {
  const encoder = encoding.createEncoder();
  for (const number of [1, 1, client, clock]) encoding.writeVarUint(encoder, number); // one client, one struct
  encoding.writeUint8(encoder, INFO_ANY_WITH_KEY);
  encoding.writeVarUint(encoder, 1); // the parent is a collection, by name
  encoding.writeVarString(encoder, root);
  encoding.writeVarString(encoder, key);
  encoding.writeVarUint(encoder, 1); // one value
  encoding.writeAny(encoder, value as Parameters<typeof encoding.writeAny>[1]);
  encoding.writeVarUint(encoder, 0); // no deletions
  return encoding.toUint8Array(encoder);
}
