import type { NamedEdit } from '@loopwright/document';
import type { LengthUnit } from '@loopwright/model';

/** What the head knows of the site; an absent note is an empty one. */
export interface SiteWords {
  readonly name: string;
  readonly note: string;
  readonly units: LengthUnit;
}

/** One step for all that was changed about the site's words; `undefined` where nothing was. */
export function siteEdit(was: SiteWords, is: SiteWords): NamedEdit | undefined {
  const edits: NamedEdit[] = [];
  if (is.name.trim() !== was.name) edits.push({ edit: 'name site', name: is.name.trim() });
  if (is.note.trim() !== was.note) edits.push({ edit: 'note site', note: is.note.trim() });
  if (is.units !== was.units) edits.push({ edit: 'set units', units: is.units });
  return edits.length > 1 ? { edit: 'several', does: 'change name, note or units of the site', edits } : edits[0];
}
