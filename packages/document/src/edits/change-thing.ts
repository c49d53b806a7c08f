import type { Write } from '../cells.ts';
import { isSameValue } from '../plain-value.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditWrites } from './edit-named.ts';
import type { FieldsOf } from './site-edit.ts';
import type { ThingKind } from './thing-kinds.ts';

/**
 * Sets fields of a thing; `null` takes one away. Only what differs is written, so that what somebody else decides about
 * the same thing at once survives.
 *
 * @returns `gone` when the thing is not there any more; `nothing` when it would be the same, or could not be read again,
 *   e.g. without its place or with an outline of too many points
 */
export function changeThing<T extends { readonly id: string }>(
  kind: ThingKind<T>,
  reading: Reading,
  id: string,
  to: FieldsOf<T>,
): EditWrites {
  const thing = kind.listed(reading.plan).find((one) => one.id === id);
  if (!thing) return 'gone';
  const changed = kind.parse({ ...thing, ...to, id });
  if (!changed) return 'nothing';
  const [before, after] = [kind.parts(thing), kind.parts(changed)];
  return [...new Set([...Object.keys(before), ...Object.keys(after)])]
    .filter((part) => !isSameValue(before[part], after[part]))
    .map((part): Write => ({ root: kind.root, group: id, part, value: after[part] ?? null }));
}
