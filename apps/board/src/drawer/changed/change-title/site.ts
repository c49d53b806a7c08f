import type { OutlineOf, SiteEdit } from '@loopwright/document';
import type { Plan } from '@loopwright/model';
import { lengthWords } from '../../../reading/lengths.ts';
import { quoted, shortName } from '../../../reading/short-name.ts';
import { sketchWords } from '../../../reading/step-words/site.ts';
import { stepWords } from '../../../reading/step-words.ts';
import { byWords, type TitleSource } from './title-source.ts';

/** What was done to the land, or drawn beside the plan, in one line. */
export function siteTitle(edit: SiteEdit, source: TitleSource): string {
  switch (edit.edit) {
    case 'name site':
      return `the site is called ${quoted(edit.name)}`;
    case 'draw boundary':
      return edit.boundary ? 'the boundary was drawn' : 'the boundary was removed';
    case 'move vertex':
    case 'add vertex':
    case 'remove vertex':
      return `outline of ${outlineWords(edit.outline, source)} changed`;
    case 'move outline':
      return `${outlineWords(edit.outline, source)} moved ${byWords(edit.by, source.units)}`;
    case 'change base':
      return `${baseWords(edit.base, source)} changed`;
    case 'remove base':
      return `${baseWords(edit.base, source)} removed`;
    case 'change feature':
      return featureTitle(edit, source);
    case 'remove features': {
      const [one] = edit.features;
      return one && edit.features.length === 1
        ? `${featureWords(one, source)} removed`
        : `${edit.features.length} features removed`;
    }
    case 'set north':
      return 'north was set';
    case 'add base':
      return `base ${quoted(edit.base.name)} placed`;
    case 'add mark':
      return `a ${edit.mark.kind} was marked`;
    case 'add image':
      return edit.image.name === undefined ? 'a picture was laid down' : `picture ${quoted(edit.image.name)} laid down`;
    case 'add sketch':
      return `${sketchWords(edit.sketch.shape)} was drawn`;
    case 'change tee set':
    case 'order tee set':
    case 'remove tee set':
      return teeSetTitle(edit, source);
    default:
      return stepWords(edit, source.now, source.at.plan.teeSets);
  }
}

function featureTitle(
  { feature, to }: Extract<SiteEdit, { readonly edit: 'change feature' }>,
  source: TitleSource,
): string {
  const what = featureWords(feature, source);
  if (typeof to.buffer === 'number') return `buffer of ${what} set to ${lengthWords(to.buffer, source.units)}`;
  if (to.geometry !== undefined) return `outline of ${what} changed`;
  if (to.allows !== undefined) return `what ${what} allows changed`;
  return `${what} changed`;
}

function teeSetTitle(
  edit: Extract<SiteEdit, { readonly edit: 'change tee set' | 'order tee set' | 'remove tee set' }>,
  { change, at }: TitleSource,
): string {
  const name = [...change.beforePlan.teeSets, ...at.plan.teeSets].find(({ id }) => id === edit.teeSet)?.name;
  const set = name === undefined ? 'a tee set' : `tee set ${quoted(name)}`;
  if (edit.edit === 'remove tee set') return `${set} removed`;
  return edit.edit === 'change tee set' ? `${set} changed` : `${set} has another place in the order`;
}

/** By the name it had, or has now: 'the pond', 'the water'. */
function featureWords(id: string, { change, at }: TitleSource): string {
  const found = [change.beforePlan, at.plan].flatMap(({ site }: Plan) => site.features).find((one) => one.id === id);
  if (!found) return 'a feature';
  return found.name === undefined ? `the ${found.kind}` : shortName(found.name);
}

function baseWords(id: string, { change, at }: TitleSource): string {
  const found = [change.beforePlan, at.plan].flatMap(({ site }: Plan) => site.bases).find((one) => one.id === id);
  return found ? `base ${quoted(found.name)}` : 'a base';
}

function outlineWords(outline: OutlineOf, source: TitleSource): string {
  switch (outline.of) {
    case 'boundary':
      return 'the boundary';
    case 'base':
      return baseWords(outline.base, source);
    case 'feature':
      return featureWords(outline.feature, source);
    case 'sketch':
      return 'a sketch';
  }
}
