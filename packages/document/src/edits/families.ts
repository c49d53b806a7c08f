import type { HoleEdit } from './hole-edit.ts';
import type { NamedEdit } from './named-edit.ts';
import type { RoutingEdit } from './routing-edit.ts';
import type { SiteEdit } from './site-edit.ts';

/** The names of a family; the compiler asks for every one of them. */
type NamesOf<Edit extends NamedEdit> = Readonly<Record<Edit['edit'], true>>;

const HOLE_EDITS: NamesOf<HoleEdit> = {
  'draw hole': true,
  'copy hole': true,
  'remove hole': true,
  'move part': true,
  'move hole': true,
  'move holes': true,
  'add turn point': true,
  'remove turn point': true,
  lengthen: true,
  'shape green': true,
  'propose tee': true,
  'set waypoints': true,
  'set corridor': true,
  'reverse hole': true,
  'exchange corridors': true,
  'move in the round': true,
  'take out': true,
  'bring back': true,
  'swap places': true,
  'set par': true,
  judge: true,
  pin: true,
  unpin: true,
  relate: true,
  unrelate: true,
  'name hole': true,
  'note hole': true,
};

const ROUTING_EDITS: NamesOf<RoutingEdit> = {
  'start routing': true,
  'copy routing': true,
  'name routing': true,
  'lock routing': true,
  'unlock routing': true,
  'remove routing': true,
  'add loop': true,
  'change loop': true,
  'remove loop': true,
  'split loop': true,
  'join loops': true,
  'reverse loop': true,
  'copy loop': true,
  'add round': true,
  'change round': true,
  'remove round': true,
};

const SITE_EDITS: NamesOf<SiteEdit> = {
  'name site': true,
  'note site': true,
  'set units': true,
  'set north': true,
  'set grid': true,
  'draw boundary': true,
  'add base': true,
  'change base': true,
  'remove base': true,
  'add features': true,
  'change feature': true,
  'remove features': true,
  'add mark': true,
  'change mark': true,
  'remove mark': true,
  'move vertex': true,
  'add vertex': true,
  'remove vertex': true,
  'move outline': true,
  'add image': true,
  'change image': true,
  'replace image': true,
  'order image': true,
  'remove image': true,
  'add tee set': true,
  'change tee set': true,
  'order tee set': true,
  'remove tee set': true,
  'add sketch': true,
  'change sketch': true,
  'wipe sketches': true,
};

/** Whether an edit is about a hole. */
export function isHoleEdit(edit: NamedEdit): edit is HoleEdit {
  return Object.hasOwn(HOLE_EDITS, edit.edit);
}

/** Whether an edit is about a routing, its loops or its rounds. */
export function isRoutingEdit(edit: NamedEdit): edit is RoutingEdit {
  return Object.hasOwn(ROUTING_EDITS, edit.edit);
}

/** Whether an edit is about the land, or about what is drawn beside the plan. */
export function isSiteEdit(edit: NamedEdit): edit is SiteEdit {
  return Object.hasOwn(SITE_EDITS, edit.edit);
}
