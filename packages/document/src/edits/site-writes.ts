import type { Reading } from '../reading/reading.ts';
import { addFeatures } from './add-features.ts';
import { addThing } from './add-things.ts';
import { changeThing } from './change-thing.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { orderThing } from './order-thing.ts';
import { removeAllButLast, removeThings } from './remove-things.ts';
import { replaceImage } from './replace-image.ts';
import { setOnSite } from './set-on-site.ts';
import type { SiteEdit } from './site-edit.ts';
import { BASES, FEATURES, IMAGES, MARKS, SKETCHES, TEE_SETS } from './thing-kinds.ts';
import { addVertex, moveOutline, moveVertex, removeVertex } from './vertices.ts';
import { wipeSketches } from './wipe-sketches.ts';

/** What an edit of the land, or of what is drawn beside the plan, would write. */
export function siteWrites(edit: SiteEdit, reading: Reading): EditWrites {
  switch (edit.edit) {
    case 'name site':
    case 'note site':
    case 'set units':
    case 'set north':
    case 'set grid':
    case 'draw boundary':
      return setOnSite(edit, reading);
    case 'move vertex':
      return moveVertex(edit, reading);
    case 'add vertex':
      return addVertex(edit, reading);
    case 'remove vertex':
      return removeVertex(edit, reading);
    case 'move outline':
      return moveOutline(edit, reading);
    case 'add sketch':
      return addThing(SKETCHES, reading, edit.sketch);
    case 'change sketch':
      return changeThing(SKETCHES, reading, edit.sketch, edit.to);
    case 'wipe sketches':
      return wipeSketches(edit, reading);
    case 'add tee set':
      return addThing(TEE_SETS, reading, edit.teeSet, edit.after);
    case 'change tee set':
      return changeThing(TEE_SETS, reading, edit.teeSet, edit.to);
    case 'order tee set':
      return orderThing(TEE_SETS, reading, edit.teeSet, edit.after);
    case 'remove tee set':
      return removeAllButLast(TEE_SETS, reading, edit.teeSet);
    default:
      return landWrites(edit, reading);
  }
}

type LandEdit = EditNamed<
  | `${'add' | 'change' | 'remove'} ${'base' | 'mark' | 'image'}`
  | 'add features'
  | 'change feature'
  | 'remove features'
  | 'replace image'
  | 'order image'
>;

/** What an edit of the things on the land, or of the images under them, would write. */
function landWrites(edit: LandEdit, reading: Reading): EditWrites {
  switch (edit.edit) {
    case 'add base':
      return addThing(BASES, reading, edit.base);
    case 'change base':
      return changeThing(BASES, reading, edit.base, edit.to);
    case 'remove base':
      return removeThings(BASES, reading, [edit.base]);
    case 'add mark':
      return addThing(MARKS, reading, edit.mark);
    case 'change mark':
      return changeThing(MARKS, reading, edit.mark, edit.to);
    case 'remove mark':
      return removeThings(MARKS, reading, [edit.mark]);
    case 'add features':
      return addFeatures(edit, reading);
    case 'change feature':
      return changeThing(FEATURES, reading, edit.feature, edit.to);
    case 'remove features':
      return removeThings(FEATURES, reading, edit.features);
    case 'add image':
      return addThing(IMAGES, reading, edit.image);
    case 'change image':
      return changeThing(IMAGES, reading, edit.image, edit.to);
    case 'replace image':
      return replaceImage(edit, reading);
    case 'order image':
      return orderThing(IMAGES, reading, edit.image, edit.after);
    case 'remove image':
      return removeThings(IMAGES, reading, [edit.image]);
  }
}
