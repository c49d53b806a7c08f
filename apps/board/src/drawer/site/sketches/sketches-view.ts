import { boundsOf } from '@loopwright/geometry';
import type { RingCentre, SitePoint, Sketch, SketchId, SketchShape } from '@loopwright/model';
import type { Consequences } from '../../../board/parts.ts';
import { inkOf } from '../../../board/people-inks.ts';
import { ringCentre } from '../../../drawing/sketches/ring-centre.ts';
import { type Names, namesOf, partWords } from '../../../reading/names.ts';
import { sketchTitle, sketchValue } from '../../../reading/sketch-words.ts';

/** A sketch in the list. */
export interface SketchRow {
  readonly id: SketchId;
  readonly title: string;
  readonly value: string;
  readonly by: string;
  readonly colour: string;
  readonly kept: boolean;
  readonly note: string;
  /** Its middle; `undefined` when it is not on this drawing. */
  readonly at?: SitePoint;
}

/** The sketches as the list shows them, the newest first. */
export function sketchRows(
  sketches: readonly Sketch[],
  ground: Consequences,
  units: Parameters<typeof namesOf>[2],
): readonly SketchRow[] {
  const names = namesOf(ground.plan, ground.routing, units);
  return sketches
    .map((sketch): SketchRow => {
      const { id, shape, by, ink, kept, note = '' } = sketch;
      const at = middleOf(shape, ground);
      const about = shape.kind === 'ring' ? ` ${aboutWords(shape.about, ground, names)}` : '';
      return {
        id,
        title: sketchTitle(shape) + about,
        value: sketchValue(shape, units),
        by,
        colour: inkOf(ink).colour,
        kept,
        note,
        ...(at ? { at } : {}),
      };
    })
    .reverse();
}

function middleOf(shape: SketchShape, { routing, analysis }: Consequences): SitePoint | undefined {
  if (shape.kind === 'ring') return ringCentre(shape.about, routing, analysis);
  const box = boundsOf(shape.kind === 'measured area' ? shape.ring : shape.points);
  return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
}

function aboutWords(about: RingCentre, { plan, routing }: Consequences, names: Names): string {
  if ('at' in about) return 'about a place';
  if (about.routing !== routing.id) return 'on another routing';
  return `about ${partWords(plan.teeSets, names.number(about.hole), about.part)}`;
}
