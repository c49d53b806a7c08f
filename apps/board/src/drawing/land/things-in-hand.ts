import type { NamedEdit, OutlineOf } from '@loopwright/document';

/** What a moving thing of the site goes by: its kind and id; the boundary alone has no id. */
export type ThingKey = `feature ${string}` | `base ${string}` | `mark ${string}` | 'boundary';

/** The things on the land that these drags hold or make, so that they alone are drawn in every picture. */
export function thingsInHand(drags: readonly NamedEdit[]): ReadonlySet<ThingKey> {
  return new Set(drags.flatMap(thingsOf));
}

function thingsOf(edit: NamedEdit): readonly ThingKey[] {
  switch (edit.edit) {
    case 'draw boundary':
      return ['boundary'];
    case 'add base':
      return [`base ${edit.base.id}`];
    case 'change base':
      return [`base ${edit.base}`];
    case 'add features':
      return edit.features.map(({ id }) => `feature ${id}` as const);
    case 'change feature':
      return [`feature ${edit.feature}`];
    case 'add mark':
      return [`mark ${edit.mark.id}`];
    case 'change mark':
      return [`mark ${edit.mark}`];
    case 'move vertex':
    case 'add vertex':
    case 'move outline':
      return outlineKey(edit.outline);
    default:
      return [];
  }
}

function outlineKey(outline: OutlineOf): readonly ThingKey[] {
  switch (outline.of) {
    case 'boundary':
      return ['boundary'];
    case 'base':
      return [`base ${outline.base}`];
    case 'feature':
      return [`feature ${outline.feature}`];
    case 'sketch':
      return [];
  }
}
