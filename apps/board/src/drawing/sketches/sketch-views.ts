import type { Analysis } from '@loopwright/analysis';
import type { LengthUnit, Routing, SitePoint, Sketch, SketchId } from '@loopwright/model';
import { openSteadyList } from '../steady-list.ts';
import { ringCentre } from './ring-centre.ts';
import { type SketchView, toSketchView } from './sketch-view.ts';

interface Kept {
  readonly sketch: Sketch;
  readonly units: LengthUnit;
  readonly centre: SitePoint | undefined;
  readonly view: SketchView | undefined;
}

/** What sketches are shown upon. */
export interface SketchGround {
  readonly routing: Routing;
  readonly analysis: Analysis;
  readonly units: LengthUnit;
}

/** A maker of sketch views with a memory of its own: a sketch that stayed as it was keeps its view. */
export function openSketchViews() {
  const steady = openSteadyList<SketchView>();
  let kept = new Map<SketchId, Kept>();
  return (sketches: readonly Sketch[], { routing, analysis, units }: SketchGround): readonly SketchView[] => {
    const now = new Map<SketchId, Kept>();
    for (const sketch of sketches) {
      const { shape } = sketch;
      const centre = shape.kind === 'ring' ? ringCentre(shape.about, routing, analysis) : undefined;
      const was = kept.get(sketch.id);
      const same =
        was?.sketch === sketch && was.units === units && was.centre?.x === centre?.x && was.centre?.y === centre?.y;
      now.set(sketch.id, same ? was : { sketch, units, centre, view: toSketchView(sketch, units, centre) });
    }
    kept = now;
    return steady([...now.values()].flatMap(({ view }) => view ?? []));
  };
}
