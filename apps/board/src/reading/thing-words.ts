import type { Site } from '@loopwright/model';
import type { SiteThing } from '../board/parts.ts';
import { shortName } from './short-name.ts';
import { sketchTitle } from './sketch-words.ts';

/** What something on the site is called in a sentence: 'Mill pond', 'the wetland', 'the natural green site'. */
export function thingWords(site: Site, thing: SiteThing): string {
  switch (thing.kind) {
    case 'boundary':
      return 'the boundary';
    case 'base': {
      const base = site.bases.find(({ id }) => id === thing.id);
      return base ? shortName(base.name) : 'a base that is gone';
    }
    case 'feature': {
      const feature = site.features.find(({ id }) => id === thing.id);
      if (!feature) return 'a feature that is gone';
      return feature.name === undefined ? `the ${feature.kind}` : shortName(feature.name);
    }
    case 'mark': {
      const mark = site.marks.find(({ id }) => id === thing.id);
      return mark ? `the ${mark.verdict === 'natural' ? 'natural ' : ''}${mark.kind}` : 'a site mark that is gone';
    }
    case 'image': {
      const image = site.images.find(({ id }) => id === thing.id);
      return image?.name === undefined ? 'the picture' : shortName(image.name);
    }
    case 'sketch': {
      const sketch = site.sketches?.find(({ id }) => id === thing.id);
      return sketch ? `the ${sketchTitle(sketch.shape).toLocaleLowerCase('en')}` : 'a sketch that is gone';
    }
  }
}
