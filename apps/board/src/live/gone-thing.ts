import type { NamedEdit, Person } from '@loopwright/document';
import type { Plan } from '@loopwright/model';
import type { SiteThing } from '../board/parts.ts';
import { shortName } from '../reading/short-name.ts';
import { thingWords } from '../reading/thing-words.ts';
import { outlineNow, thingOf } from '../tools/land/outlines-of.ts';

/** Something on the land that a drag can no longer move: it was removed, or the vertex it holds was moved or removed. */
export interface GoneThing {
  readonly thing: SiteThing;
  readonly gone: 'the thing' | 'its vertex';
}

/** What a drag of the land speaks of that is not there any more as it was; what is only being drawn is none. */
export function goneThingOf(edit: NamedEdit, { site }: Plan): GoneThing | undefined {
  switch (edit.edit) {
    case 'change mark':
      return site.marks.some(({ id }) => id === edit.mark) ? undefined : gone({ kind: 'mark', id: edit.mark });
    case 'change base':
      return site.bases.some(({ id }) => id === edit.base) ? undefined : gone({ kind: 'base', id: edit.base });
    case 'change feature':
      return site.features.some(({ id }) => id === edit.feature)
        ? undefined
        : gone({ kind: 'feature', id: edit.feature });
    case 'move outline':
      return outlineNow(site, edit.outline) ? undefined : gone(thingOf(edit.outline));
    case 'move vertex':
    case 'add vertex': {
      const now = outlineNow(site, edit.outline);
      if (!now) return gone(thingOf(edit.outline));
      const held = edit.edit === 'move vertex' ? edit.from : edit.after;
      const isThere = now.points.some(({ x, y }) => x === held.x && y === held.y);
      return isThere ? undefined : { thing: thingOf(edit.outline), gone: 'its vertex' };
    }
    default:
      return undefined;
  }
}

const gone = (thing: SiteThing): GoneThing => ({ thing, gone: 'the thing' });

/**
 * What is said when such a drag is let go: 'Mill pond was removed by Ann meanwhile; your drag was let go.'
 *
 * @param before  the plan as it was shown: the thing still has its name there
 * @param others  everybody else at the board: of one we know the name, of several not whose deed it was
 */
export function thingGoneWords(
  { thing, gone }: GoneThing,
  before: Plan,
  others: readonly Pick<Person, 'name'>[],
): string {
  const [only, ...more] = others;
  const by = only && more.length === 0 ? shortName(only.name) : 'somebody else';
  const words = thingWords(before.site, thing);
  const name = `${words.slice(0, 1).toLocaleUpperCase('en')}${words.slice(1)}`;
  return gone === 'the thing'
    ? `${name} was removed by ${by} meanwhile; your drag was let go.`
    : `${name} was changed just there by ${by} meanwhile; your drag was let go.`;
}
