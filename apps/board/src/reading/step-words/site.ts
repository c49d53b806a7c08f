import type { OutlineOf, SiteEdit } from '@loopwright/document';
import type { SketchShape, TeeSet } from '@loopwright/model';
import { quoted } from '../short-name.ts';

/** What was done to the land, or drawn beside the plan, as undo names it. */
export function siteStepWords(edit: SiteEdit, teeSets: readonly TeeSet[]): string {
  switch (edit.edit) {
    case 'name site':
      return 'name of the site';
    case 'note site':
      return 'note on the site';
    case 'set units':
      return 'choice of the board’s unit';
    case 'set north':
      return 'setting of north';
    case 'set grid':
      return 'setting of the survey grid';
    case 'draw boundary':
      return edit.boundary ? 'drawing of the boundary' : 'removal of the boundary';
    case 'move vertex':
    case 'add vertex':
    case 'remove vertex':
    case 'move outline':
      return `change of ${outlineWords(edit.outline)}`;
    case 'add tee set':
      return `adding of tee set ${quoted(edit.teeSet.name)}`;
    case 'change tee set':
    case 'order tee set':
    case 'remove tee set':
      return teeSetStepWords(edit, teeSets);
    case 'add sketch':
      return `drawing of ${sketchWords(edit.sketch.shape)}`;
    case 'change sketch':
      return 'change of a sketch';
    case 'wipe sketches':
      return edit.sketches.length === 1 ? 'wiping of a sketch' : `wiping of ${edit.sketches.length} sketches`;
    default:
      return thingStepWords(edit);
  }
}

type ThingEdit = Extract<
  SiteEdit,
  { readonly edit: `${string} ${'base' | 'feature' | 'features' | 'mark' | 'image'}` }
>;

function thingStepWords(edit: ThingEdit): string {
  switch (edit.edit) {
    case 'add base':
      return `adding of base ${quoted(edit.base.name)}`;
    case 'change base':
      return 'change of a base';
    case 'remove base':
      return 'removal of a base';
    case 'add features': {
      const [one] = edit.features;
      return one && edit.features.length === 1 ? `adding of ${one.kind}` : `adding of ${edit.features.length} features`;
    }
    case 'change feature':
      return 'change of a feature';
    case 'remove features':
      return edit.features.length === 1 ? 'removal of a feature' : `removal of ${edit.features.length} features`;
    case 'add mark':
      return `marking of a ${edit.mark.kind}`;
    case 'change mark':
      return 'change of a site mark';
    case 'remove mark':
      return 'removal of a site mark';
    case 'add image':
      return `laying down of picture ${quoted(edit.image.name ?? 'without a name')}`;
    case 'change image':
      return imageStepWords(edit);
    case 'replace image':
      return 'replacement of a picture';
    case 'order image':
      return 'order of the pictures';
    case 'remove image':
      return 'removal of a picture';
  }
}

function imageStepWords({ to }: Extract<SiteEdit, { readonly edit: 'change image' }>): string {
  if (to.scaledBy !== undefined) return 'scaling of a picture';
  if (to.placement !== undefined) return 'placing of a picture';
  if (to.opacity !== undefined) return 'opacity of a picture';
  return 'name of a picture';
}

type TeeSetEdit = Extract<SiteEdit, { readonly edit: 'change tee set' | 'order tee set' | 'remove tee set' }>;

function teeSetStepWords(edit: TeeSetEdit, teeSets: readonly TeeSet[]): string {
  const name = teeSets.find(({ id }) => id === edit.teeSet)?.name;
  const set = name === undefined ? 'a tee set' : `tee set ${quoted(name)}`;
  if (edit.edit === 'remove tee set') return `removal of ${set}`;
  return edit.edit === 'change tee set' ? `change of ${set}` : `order of ${set}`;
}

const SKETCHES: Readonly<Record<SketchShape['kind'], string>> = {
  stroke: 'a pencil line',
  'measured line': 'a measured line',
  'measured area': 'a measured area',
  ring: 'a clearance ring',
  rod: 'a rod',
};

/** What was drawn beside the plan: 'a clearance ring'. */
export const sketchWords = ({ kind }: SketchShape): string => SKETCHES[kind];

const OUTLINES: Readonly<Record<OutlineOf['of'], string>> = {
  boundary: 'the boundary',
  base: 'a base',
  feature: 'a feature',
  sketch: 'a sketch',
};

function outlineWords({ of }: OutlineOf): string {
  return OUTLINES[of];
}
