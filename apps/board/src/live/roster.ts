import type { NamedEdit, Person } from '@loopwright/document';

/** Whether two lists name the same people with the same selections, wherever their pointers are. */
export function sameRoster(one: readonly Person[], other: readonly Person[]): boolean {
  return one.length === other.length && one.every((person, index) => sameInRoster(person, other[index]));
}

function sameInRoster(a: Person, b: Person | undefined): boolean {
  return (
    b !== undefined &&
    a.client === b.client &&
    a.name === b.name &&
    a.ink === b.ink &&
    a.routing === b.routing &&
    a.selection.length === b.selection.length &&
    a.selection.every((hole, index) => hole === b.selection[index]) &&
    (a.drag === undefined) === (b.drag === undefined)
  );
}

/** Whether the same hands hold the same drags. */
export function sameDrags(one: readonly { readonly edit: NamedEdit }[], other: typeof one): boolean {
  return one.length === other.length && one.every(({ edit }, index) => edit === other[index]?.edit);
}
